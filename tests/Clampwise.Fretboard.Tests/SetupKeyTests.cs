using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

/// <summary>Names follow the key of their setup; in a tuning that is another one moved, the letters of shapes are that one's.</summary>
public class SetupKeyTests
{
    [Theory]
    [InlineData("standard + full@2 + 3-5@4", "D", "F#")]
    [InlineData("half step down", "G", "F#")]
    [InlineData("half step down + 3-5@2", "D", "Eb")]
    [InlineData("drop C + 2-4@2", "G", "G")]
    [InlineData("F2 A#2 D#3 G#3 C4 F4 + 2-4@2", "G", "Bb")]
    [InlineData("open E", "E", "E")]
    public void A_setup_has_a_key_of_its_shapes_and_one_that_sounds(string text, string shapes, string sounds)
    {
        Setup setup = Setup.Parse(text).Value;
        Assert.Equal((shapes, sounds), ($"{setup.Key}", $"{setup.SoundingKey}"));
    }

    // A rig that sounds in F#: its chords are those of the key of F#.
    [Theory]
    [InlineData("D", "F#")]
    [InlineData("A", "C#")]
    [InlineData("Bm", "D#m")]
    [InlineData("G", "B")]
    [InlineData("Em", "G#m")]
    [InlineData("C", "E")]
    public void Sounding_names_are_spelled_in_the_sounding_key(string shape, string sounds)
    {
        Setup setup = Setup.Parse("standard + full@2 + 3-5@4").Value;
        var query = new VoicingQuery { ShapeName = ChordSymbol.Parse(shape).Value, Limit = 1 };
        Voicing best = Assert.Single(new Finder(setup).Find(query).Value.Voicings).Voicing;
        Assert.Equal((shape, sounds), (best.ShapeName, best.SoundingName));
    }

    [Theory]
    [InlineData("half step down + 3-5@2", "xx0454", "D", "Eb")]
    [InlineData("half step down", "x32010", "C", "B")]
    [InlineData("whole step down", "xx0232", "D", "C")]
    [InlineData("baritone", "320003", "G", "D")]
    [InlineData("drop C", "000232", "D", "C")]
    [InlineData("C#2 G#2 C#3 F#3 A#3 D#4", "000232", "D", "Db")]
    [InlineData("open E", "000000", "E", "E")]
    [InlineData("standard", "x32010", "C", "C")]
    public void A_moved_tuning_takes_the_letters_of_the_named_one(string text, string fretting, string shape, string sounds)
    {
        Voicing voicing = Voicing.Parse(Setup.Parse(text).Value, fretting).Value;
        Assert.Equal((shape, sounds), (voicing.ShapeName, voicing.SoundingName));
    }

    [Fact]
    public void A_given_key_spells_and_changes_nothing_else()
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        Setup given = setup.In(MusicalKey.Parse("F").Value);
        Assert.Equal(setup, given);
        Assert.Equal("G", given.SoundingKey.ToString());
        Assert.Equal("F", given.MovedBy(1).Value.Key.ToString());
        Assert.Equal("F", FullCapo.Move(given, 1).Value.Key.ToString());
        Assert.Equal("D", given.In(null).Key.ToString());
    }

    [Theory]
    [InlineData("standard + 1-5@1", null)]
    [InlineData("standard + full@3 + 2-4@5", null)]
    [InlineData("half step down + 3-5@2", "Gm")]
    [InlineData("DADGAD + 2-4@4", "C#")]
    public void The_open_strings_and_the_tuning_plan_spell_alike(string text, string? key)
    {
        Setup setup = Setup.Parse(text).Value.In(key is null ? null : MusicalKey.Parse(key).Value);
        Assert.Equal(setup.GroundNames, TuningPlan.Of(setup).Targets.Select(target => $"{target.Spelled}"));
        Assert.Equal(setup.GroundPitches, TuningPlan.Of(setup).Targets.Select(target => target.Spelled.Pitch));
    }
}
