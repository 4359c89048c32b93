using CsCheck;

namespace Clampwise.Fretboard.Tests;

/// <summary>The index against brute force, and against counts that two independent programs agree on.</summary>
public class VoicingIndexTests
{
    private static readonly Gen<(Setup Setup, FrettingSpace Space, Hand Hand)> s_small = Gen.Select(
        Gens.Setups.Where(setup => setup.StringCount <= 6), Gen.Int[1, 4], Gen.Int[1, 4], Gen.Double[60.0, 130.0], Gen.Bool)
        .Select((setup, maxFret, span, millimetres, thumb) => (
            setup,
            FrettingSpace.Create(setup.StringCount > 5 ? Math.Min(maxFret, 3) : maxFret, span).Value,
            Hand.OfSpan(millimetres).Value with { UsesThumb = thumb }));

    [Fact]
    public void On_small_necks_it_holds_just_what_brute_force_finds() => s_small.Holds(small =>
    {
        var expected = NaiveSpace.Frettings(small.Setup, small.Space)
            .Where(fretting => Fingering.Of(Voicing.Create(small.Setup, fretting, allowBehindClamp: true).Value, small.Hand).IsGood)
            .ToHashSet();
        Fretting[] actual = [.. VoicingIndex.Build(small.Setup, small.Hand, space: small.Space).Frettings];
        Assert.Equal(actual.Length, actual.Distinct().Count());
        Assert.True(expected.SetEquals(actual));
    }, count: 25);

    [Fact]
    public void Difficulty_bass_and_classes_are_those_of_the_voicing() => s_small.Holds(small =>
    {
        foreach (PackedVoicing packed in VoicingIndex.Build(small.Setup, small.Hand, space: small.Space).Parts.SelectMany(part => part))
        {
            Voicing voicing = Voicing.Create(small.Setup, packed.ToFretting(small.Setup.StringCount), allowBehindClamp: true).Value;
            double difficulty = Fingering.Of(voicing, small.Hand).Value.Difficulty;
            Assert.Equal(PackedVoicing.ToTenth(difficulty), packed.Difficulty);
            Assert.Equal(Math.Min(PackedVoicing.HardestPoints, difficulty), packed.Difficulty, 0.0501);
            Assert.Equal(voicing.Pitches.Min().Class.Number, packed.BassClass);
            Assert.Equal(voicing.Pitches.Aggregate(0, (bits, pitch) => bits | (1 << pitch.Class.Number)), packed.Classes);
        }
    }, count: 15);

    // A hand that reaches everything can finger all that four fingers can stop where any may barre: the counts that two
    // independent programs agree on, less those that need a barre through a clamp, which the brute force alone tells apart.
    [Theory]
    [InlineData("standard", 321_237)]
    [InlineData("standard + 3-5@2", 281_583)]
    [InlineData("standard + full@2 + 3-5@4", 225_957)]
    [InlineData("standard + 1-5@2", 269_509)]
    public void A_hand_that_reaches_everything_leaves_out_only_barres_through_a_clamp(string text, int published)
    {
        Setup setup = Setup.Parse(text).Value;
        FrettingSpace space = FrettingSpace.Create(14, 4).Value;
        int[][] all = [.. NaiveBarres.Frettings(setup, space)];
        Assert.Equal(published, all.Count(frets => NaiveBarres.Fingers(setup, frets, throughClamps: true) <= 4));
        int playable = all.Count(frets => NaiveBarres.Fingers(setup, frets, throughClamps: false) <= 4);
        Assert.Equal(playable, VoicingIndex.Build(setup, Hand.OfSpan(Hand.WidestMillimetres).Value, space: space).Count);
    }

    // Strings 2 to 4 are clamped between free ones, as the setups with published counts hardly have it.
    [Theory]
    [InlineData("standard + 2-4@2")]
    [InlineData("standard + 3@2 + 2-4@5")]
    [InlineData("DADGAD + 3-4@9")]
    public void Where_a_clamp_lies_between_free_strings_some_are_left_out_and_no_others(string text)
    {
        Setup setup = Setup.Parse(text).Value;
        FrettingSpace space = FrettingSpace.Create(14, 4).Value;
        int[][] all = [.. NaiveBarres.Frettings(setup, space)];
        int playable = all.Count(frets => NaiveBarres.Fingers(setup, frets, throughClamps: false) <= 4);
        Assert.InRange(playable, 1, new FrettingCounter { Space = space, Barres = BarreRule.Any }.Count(setup) - 1);
        Assert.Equal(playable, VoicingIndex.Build(setup, Hand.OfSpan(Hand.WidestMillimetres).Value, space: space).Count);
    }

    [Fact]
    public void Eight_bytes_a_voicing_keep_seven_strings_within_sixteen_megabytes()
    {
        var index = VoicingIndex.Build(Setup.Parse("seven string").Value, Hand.Large);
        Assert.Equal(index.Count * 8L, index.Bytes);
        Assert.InRange(index.Bytes, 1, 16_000_000);
    }

    [Fact]
    public void A_larger_hand_loses_nothing()
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        int[] counts = [.. new[] { Hand.Small, Hand.Medium, Hand.Large }.Select(hand => VoicingIndex.Build(setup, hand).Count)];
        Assert.True(counts[0] < counts[1] && counts[1] <= counts[2]);
    }
}
