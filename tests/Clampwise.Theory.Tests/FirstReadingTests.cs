namespace Clampwise.Theory.Tests;

/// <summary>The quick way to the first reading.</summary>
public class FirstReadingTests
{
    [Fact]
    public void It_allocates_nothing_once_a_set_of_tones_is_known()
    {
        Pitch[] voicing = [.. new[] { 40, 47, 52, 57, 59, 64 }.Select(Pitch.FromMidi)];
        FirstReading first = FirstReading.Of(voicing);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            first = FirstReading.Of(voicing);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal("Esus4", first.Symbol!.ToString());
    }

    [Theory]
    [InlineData("C#m7", true)]
    [InlineData("Dbm7", true)]
    [InlineData("E6/C#", false)]
    [InlineData("C#m", false)]
    public void It_knows_a_symbol_in_any_spelling(string symbol, bool isIt)
    {
        Pitch[] voicing = [.. new[] { "C#3", "G#3", "B3", "E4" }.Select(text => Pitch.Parse(text).Value)];
        Assert.Equal(isIt, FirstReading.Of(voicing).Is(ChordSymbol.Parse(symbol).Value));
    }
}
