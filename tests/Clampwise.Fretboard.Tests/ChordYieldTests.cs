using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

public class ChordYieldTests
{
    private static readonly Finder s_standard = new(Setup.Parse("standard").Value);
    private static readonly Finder s_clamped = new(Setup.Parse("standard + 3-5@2").Value);

    [Fact]
    public void Chords_around_the_drone_are_easier_over_it()
    {
        var comparison = ChordYield.Of(s_standard, s_clamped, [ChordSymbol.Parse("Esus4").Value, ChordSymbol.Parse("B7sus4").Value]);
        Assert.Equal(s_clamped.Setup, comparison.Better);
        Assert.All(comparison.Chords, chord => Assert.True(chord.Second > chord.First));
        Assert.Equal("standard + 3-5@2 gives more of these chords easily", comparison.Lines.Last());
    }

    [Fact]
    public void A_setup_against_itself_does_not_lead()
    {
        var comparison = ChordYield.Of(s_standard, s_standard, [ChordSymbol.Parse("G").Value]);
        Assert.Null(comparison.Better);
        Assert.Equal("neither setup leads", comparison.Lines.Last());
    }

    [Fact]
    public void The_counts_are_those_of_the_finder()
    {
        ChordYieldLine line = ChordYield.Of(s_standard, s_clamped, [ChordSymbol.Parse("A").Value]).Chords.Single();
        int expected = s_standard.Index.Frettings
            .Select(fretting => Voicing.Create(s_standard.Setup, fretting).Value)
            .Where(voicing => voicing.Pitches.Length >= ChordYield.FewestStrings && voicing.Pitches.Min().Class == PitchClass.Of(9))
            .Where(voicing => PackedVoicing.ToTenth(Fingering.Of(voicing).Value.Difficulty) <= ChordYield.EasyPoints)
            .Count(voicing => voicing.Sounding.Accepts(ChordSymbol.Parse("A").Value).IsAccepted);
        Assert.Equal(expected, line.First);
    }

    [Fact]
    public void An_open_C_is_easy_and_a_barre_across_six_strings_is_not()
    {
        Assert.InRange(Fingering.Of(Voicing.Parse(s_standard.Setup, "x32010").Value).Value.Difficulty, 0.0, ChordYield.EasyPoints);
        Assert.InRange(Fingering.Of(Voicing.Parse(s_standard.Setup, "133211").Value).Value.Difficulty, ChordYield.EasyPoints, 20.0);
    }
}
