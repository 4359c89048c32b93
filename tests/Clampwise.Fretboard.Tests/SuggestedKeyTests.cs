namespace Clampwise.Fretboard.Tests;

public class SuggestedKeyTests
{
    // The home keys that a teacher names for these setups (judgement of the trade, no source; tests/data/teacher-hands.txt is built on them).
    [Theory]
    [InlineData("standard + 3-5@2", "D", "E")]
    [InlineData("standard + 2-4@2", "G", "A")]
    [InlineData("standard + 1-5@2", "D", "E")]
    [InlineData("standard + 2-6@2", "G", "A")]
    [InlineData("standard + 1-4@2", "G", "A")]
    [InlineData("standard", "G", "G")]
    [InlineData("standard + 3-5@4", "C", "E")]
    [InlineData("standard + full@3 + 3-5@5", "D", "G")]
    [InlineData("drop D + 1-3@2", "C", "D")]
    [InlineData("standard + 2-5@2", "D", "E")]
    public void A_setup_suggests_the_key_that_it_is_made_for(string text, string shapes, string sounds)
    {
        Setup setup = Setup.Parse(text).Value;
        Assert.Equal(shapes, setup.Key.ToString());
        Assert.Equal(sounds, setup.SoundingKey.ToString());
    }
}
