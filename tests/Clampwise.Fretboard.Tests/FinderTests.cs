using System.Collections.Immutable;
using Clampwise.Theory;
using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class FinderTests
{
    private static readonly Finder s_clamped = new(Setup.Parse("standard + 3-5@2").Value);
    private static readonly Finder s_standard = new(Setup.Parse("standard").Value);

    // The chords of a beginner's first lessons (common practice, no source), each by its own open shape.
    [Theory]
    [InlineData("C", "x32010")]
    [InlineData("G", "320003")]
    [InlineData("D", "xx0232")]
    [InlineData("A", "x02220")]
    [InlineData("E", "022100")]
    [InlineData("Em", "022000")]
    [InlineData("Am", "x02210")]
    [InlineData("Dm", "xx0231")]
    [InlineData("E7", "020100")]
    [InlineData("A7", "x02020")]
    public void Open_shapes_are_among_the_best(string name, string fretting)
    {
        var query = new VoicingQuery { SoundingName = ChordSymbol.Parse(name).Value, MinStrings = 4, Limit = 5 };
        FindResult result = s_standard.Find(query).Value;
        Assert.Contains(fretting, result.Voicings.Select(found => found.Voicing.Fretting.ToString()));
    }

    [Fact]
    public void A_shape_name_counts_from_the_home_clamp_and_a_sounding_name_does_not()
    {
        FindResult shape = s_clamped.Find(new VoicingQuery { ShapeName = ChordSymbol.Parse("Dsus4").Value }).Value;
        FindResult sounding = s_clamped.Find(new VoicingQuery { SoundingName = ChordSymbol.Parse("Esus4").Value }).Value;
        Assert.Equal(sounding.Total, shape.Total);
        Assert.Equal("000000", shape.Voicings[0].Voicing.Fretting.ToString());
    }

    [Fact]
    public void Each_weight_is_said_and_they_add_up()
    {
        var query = new VoicingQuery { SoundingName = ChordSymbol.Parse("E5").Value, MinStrings = 6, Limit = 1 };
        FoundVoicing found = s_clamped.Find(query).Value.Voicings[0];
        Assert.Equal("000400", found.Voicing.Fretting.ToString());
        Assert.Equal("one finger, five strings ring, four pairs of them in unison or octaves, hand at fret 4, root in the bass", found.Summary);
        Assert.Equal(
        [
            new Price("one finger", 1.0),
            new Price("five strings ring", -0.5),
            new Price("four pairs of them in unison or octaves", -0.8),
            new Price("hand at fret 4", 1.6),
            new Price("root in the bass", -0.8),
        ], found.Reasons.Select(reason => reason with { Points = Math.Round(reason.Points, 9) }));
        Assert.Equal(0.5, found.Score, 9);
    }

    [Fact]
    public void Near_to_a_voicing_its_voices_move_little()
    {
        Voicing near = Voicing.Parse(s_standard.Setup, "x32010").Value;
        var query = new VoicingQuery { SoundingName = ChordSymbol.Parse("Am").Value, Near = near, MaxMovement = 8, MinStrings = 4 };
        FindResult result = s_standard.Find(query).Value;
        Assert.All(result.Voicings, found => Assert.InRange(VoiceMovement.Between(near, found.Voicing).Total, 0, 8));
        Assert.Contains("x02210", result.Voicings.Select(found => found.Voicing.Fretting.ToString()));
        Assert.Equal(
            "voices move five semitones, three stay",
            VoiceMovement.Between(near, Voicing.Parse(s_standard.Setup, "x02210").Value).ToString());
    }

    [Fact]
    public void A_name_with_tones_left_out_says_so()
    {
        FoundVoicing found = s_standard.Judge(
            Voicing.Parse(s_standard.Setup, "x3x310").Value, new VoicingQuery { SoundingName = ChordSymbol.Parse("C7").Value }).Value;
        Assert.Contains(found.Reasons, price => price.Words == "without the fifth");
    }

    [Fact]
    public void A_seventh_without_its_third_comes_after_all_that_have_one_and_says_so()
    {
        var query = new VoicingQuery { ShapeName = ChordSymbol.Parse("D7").Value, Limit = int.MaxValue };
        FoundVoicing[] found = [.. new Finder(Setup.Parse("standard + 3-5@2").Value).Find(query).Value.Voicings];
        int first = Array.FindIndex(found, one => one.Voicing.ShapeName == "D7(no3)");
        Assert.InRange(first, 10, found.Length - 1);
        Assert.All(found[..first], one => Assert.Contains(one.Voicing.Pitches, pitch => pitch.Class == PitchClass.Of(8)));
        Assert.All(found[first..], one =>
        {
            Assert.DoesNotContain(one.Voicing.Pitches, pitch => pitch.Class == PitchClass.Of(8));
            Assert.Contains(one.Reasons, reason => reason.Words == "called E7 in lessons, written E7(no3)");
        });
        Assert.Contains(found[first..], one => one.Fingering.Placements.Length == 1);

        ImmutableArray<FoundHand> hands = new Finder(Setup.Parse("standard + 3-5@2").Value).FindHands(query with { Limit = 1000 }).Value.Hands;
        Assert.All(hands, hand => Assert.All(hand.Variants, variant => Assert.Equal(hand.Whole.Voicing.ShapeName == "D7(no3)", variant.ShapeName == "D7(no3)")));
        Assert.Equal(hands.OrderBy(hand => hand.Whole.Voicing.ShapeName == "D7(no3)"), hands);
    }

    [Fact]
    public void Behind_the_clamp_only_when_asked_for()
    {
        var query = new VoicingQuery { SoundingName = ChordSymbol.Parse("C").Value, Limit = 0 };
        FindResult without = s_clamped.Find(query).Value;
        FindResult with = s_clamped.Find(query with { AllowBehindClamp = true }).Value;
        Assert.True(without.Total < with.Total);
        Assert.Empty(without.Voicings);
    }

    [Fact]
    public void Everything_asked_for_holds_and_nothing_that_fits_is_left_out() => SmallQueries.Holds(small =>
    {
        var finder = new Finder(small.Setup, space: small.Space);
        FindResult result = finder.Find(small.Query).Value;
        Voicing[] expected = [.. NaiveSpace.Frettings(small.Setup, small.Space)
            .Select(fretting => Voicing.Create(small.Setup, fretting, allowBehindClamp: true).Value)
            .Where(voicing => Fingering.Of(voicing).IsGood && NaiveQuery.Fits(small.Query, voicing))];
        Assert.Equal(expected.Length, result.Total);
        Assert.Equal(Math.Min(small.Query.Limit, expected.Length), result.Voicings.Length);
        Assert.All(result.Voicings, found => Assert.Contains(found.Voicing, expected));

        // The index keeps difficulty to a tenth of a point.
        double[] scores = [.. expected.Select(voicing => finder.Judge(voicing, small.Query).Value.Score).Order()];
        Assert.All(result.Voicings.Select((found, i) => found.Score - scores[i]), behind => Assert.InRange(behind, -1e-6, 0.1001));
    }, count: 150);

    [Fact]
    public void Chords_are_counted_by_name()
    {
        ChordCount open = s_clamped.Chords(new VoicingQuery { MinStrings = 6, MaxDifficulty = 0.0 }).Single();
        Assert.Equal(("Esus4", 1, 0.0), (open.Symbol.ToString(), open.Voicings, open.EasiestPoints));
    }

    [Fact]
    public void Refuses_what_does_not_belong_to_the_setup()
    {
        Assert.Equal(
            "there is no string 7: strings are numbered 1, the highest, to 6",
            s_standard.Find(new VoicingQuery { KeepRinging = StringSet.Parse("7", 8).Value }).Fault.ToString());
        Assert.Equal(
            "the voicing to stay near has 4 strings, the setup has 6",
            s_standard.Find(new VoicingQuery { Near = Voicing.OpenStrings(Setup.Parse("bass").Value) }).Fault.ToString());
        Assert.Equal(
            "the number of voicings to show is -1: give 0 or more",
            s_standard.Find(new VoicingQuery { Limit = -1 }).Fault.ToString());
        Assert.Equal(
            "the number of strings that ring is 9: this setup takes 0 to 6",
            s_standard.Find(new VoicingQuery { MinRinging = 9 }).Fault.ToString());
        Assert.Equal(
            "the number of strings that sound is 0: this setup takes 1 to 6",
            s_standard.FindHands(new VoicingQuery { MinStrings = 0 }).Fault.ToString());
        Assert.Equal(
            "the greatest difficulty is NaN: give points from 0 up, such as 3 or 4.5",
            s_standard.Find(new VoicingQuery { MaxDifficulty = double.NaN }).Fault.ToString());
        Assert.Equal(
            "the position is fret 20, but fingers go no higher than fret 14 here",
            s_standard.FindHands(new VoicingQuery { Position = Fret.Of(20) }).Fault.ToString());
    }

    [Theory]
    [InlineData("R 3 5 b7", "R,3,5,b7")]
    [InlineData("1,b3,5", "R,b3,5")]
    [InlineData("R ♯11", "R,#11")]
    public void Degrees_read(string text, string degrees) => Assert.Equal(degrees, DegreesWanted.Parse(text).Value.Degrees.ToString());

    [Theory]
    [InlineData("R 3 x", "column 5: expected degrees such as R 3 5 b7 9, found 'x'")]
    [InlineData("R 14", "column 3: expected degrees such as R 3 5 b7 9, found '14'")]
    [InlineData(" ", "column 1: expected degrees such as R 3 5 b7 9, found nothing")]
    public void Degrees_refuse(string text, string words) => Assert.Equal(words, DegreesWanted.Parse(text).Fault.ToString());

    private static Gen<(Setup Setup, FrettingSpace Space, VoicingQuery Query)> SmallQueries =>
        Gens.Setups.Where(setup => setup.StringCount <= 5).SelectMany(setup =>
            Gen.Select(Gen.Int[2, 5], Gen.Int[2, 4]).SelectMany((maxFret, span) =>
                NaiveQuery.Queries(setup, maxFret).Select(query => (setup, FrettingSpace.Create(maxFret, span).Value, query))));
}
