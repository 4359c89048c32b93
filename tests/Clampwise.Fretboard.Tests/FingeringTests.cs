using Clampwise.Theory;
using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class FingeringTests
{
    private const int Trials = 2000;
    private static readonly Hand s_widest = Hand.OfSpan(Hand.WidestMillimetres).Value;

    // Lowest string first, as every beginner's book fingers them (common practice, no source).
    [Theory]
    [InlineData("standard", "022100", "-23 1--")]
    [InlineData("standard", "022000", "-12 ---")]
    [InlineData("standard", "x02210", "--2 31-")]
    [InlineData("standard", "x32010", "-32 -1-")]
    [InlineData("standard", "xx0232", "--- 132")]
    [InlineData("standard", "xx0231", "--- 231")]
    [InlineData("standard", "320003", "21- --3")]
    [InlineData("standard", "320001", "32- --1")]
    [InlineData("standard", "x21202", "-21 3-4")]
    [InlineData("standard", "133211", "134 211")]
    [InlineData("standard", "133111", "134 111")]
    [InlineData("standard", "x24432", "-13 421")]
    [InlineData("standard", "xx3211", "--3 211")]
    [InlineData("standard", "x32030", "-21 -3-")]
    [InlineData("standard + 3-5@2", "005400", "--2 1--")]
    [InlineData("standard + full@2", "044300", "-23 1--")]
    [InlineData("standard", "x00000", "--- ---")]
    public void Well_known_shapes(string setup, string fretting, string fingers)
    {
        Fingering fingering = Fingering.Of(Voicing.Parse(Setup.Parse(setup).Value, fretting).Value).Value;
        IEnumerable<string> marks = fingering.ByString.Select(finger => finger == Finger.None ? "-" : finger.Mark());
        Assert.Equal(fingers.Replace(" ", "", StringComparison.Ordinal), string.Concat(marks));
    }

    [Theory]
    [InlineData("standard", "133211", "1 at fret 1 across strings 1-6, 2 at fret 2 on string 3, 3 at fret 3 on string 5, 4 at fret 3 on string 4")]
    [InlineData("standard", "x24442", "1 at fret 2 across strings 1-5, 3 at fret 4 across strings 2-4")]
    [InlineData("standard + 3-5@2", "3x0003", "1 at fret 3 on string 6, 2 at fret 3 on string 1")]
    [InlineData("standard", "000000", "no finger")]
    public void In_words(string setup, string fretting, string words) =>
        Assert.Equal(words, Fingering.Of(Voicing.Parse(Setup.Parse(setup).Value, fretting).Value).Value.ToString());

    [Theory]
    [InlineData("1 3 x 2 0 1", 105, "")]
    [InlineData("202020", 105, "")]
    [InlineData("213021", 105, "five fingers needed")]
    [InlineData("213021", 180, "five fingers needed")]
    [InlineData("1 x x x x 6", 105, "reach 153 mm, from fret 1 to fret 6: this hand spans 105 mm")]
    [InlineData("1 x x x x 4", 90, "reach 97 mm, from fret 1 to fret 4: this hand spans 90 mm")]
    [InlineData("1 x x x x 4", 105, "")]
    [InlineData("140405", 130, "finger 1 at fret 1 and finger 2 at fret 4 lie 97 mm apart: in this hand they spread 91 mm")]
    public void Refuses(string fretting, int span, string words)
    {
        Result<Fingering> result = Fingering.Of(Voicing.Parse(Setup.Parse("standard").Value, fretting).Value, Hand.OfSpan(span).Value);
        Assert.Equal(words, result.IsGood ? "" : result.Fault.Message);
    }

    [Theory]
    [InlineData("standard", "2 0 2 x x x", 2)]
    [InlineData("standard", "2 x 2 x x x", 1)]
    [InlineData("standard + 5@2", "3 0 3 x x x", 2)]
    public void A_barre_never_lies_across_a_string_that_must_ring_from_behind_it(string setup, string fretting, int fingers) =>
        Assert.Equal(fingers, Fingering.Of(Voicing.Parse(Setup.Parse(setup).Value, fretting).Value).Value.Placements.Length);

    // The clamp lies on the strings it holds, at its own fret, whatever is done with them; behind it and beyond it a finger can lie.
    [Theory]
    [InlineData("standard + 5@2", "2 0 2 x x x", "1 at fret 2 on string 6, 2 at fret 2 on string 4")]
    [InlineData("standard + 5@2", "2 x 2 x x x", "1 at fret 2 on string 6, 2 at fret 2 on string 4")]
    [InlineData("standard + 5@2", "2 4 2 x x x", "1 at fret 2 on string 6, 2 at fret 2 on string 4, 4 at fret 4 on string 5")]
    [InlineData("standard + 5@2", "x x 2 2 2 2", "1 at fret 2 across strings 1-4")]
    [InlineData("standard + 5@2", "1 0 1 x x x", "1 at fret 1 across strings 4-6")]
    [InlineData("standard + 5@2 + 5@4", "2 0 2 x x x", "1 at fret 2 on string 6, 2 at fret 2 on string 4")]
    [InlineData("standard + 5@2 + 5@4", "3 0 3 x x x", "1 at fret 3 across strings 4-6")]
    [InlineData("standard + 2-4@2", "244002", "1 at fret 2 on string 6, 2 at fret 2 on string 1, 3 at fret 4 on string 5, 4 at fret 4 on string 4")]
    public void A_barre_never_lies_across_a_clamp(string setup, string fretting, string words) =>
        Assert.Equal(words, Fingering.Of(
            Voicing.Parse(Setup.Parse(setup).Value, fretting, allowBehindClamp: true).Value, s_widest).Value.ToString());

    [Fact]
    public void The_thumb_takes_the_lowest_string_only_where_it_is_allowed()
    {
        Voicing voicing = Voicing.Parse(Setup.Parse("standard").Value, "2 0 0 2 3 2").Value;
        Assert.DoesNotContain(Finger.Thumb, Fingering.Of(voicing).Value.ByString);
        Voicing crowded = Voicing.Parse(Setup.Parse("standard").Value, "213021").Value;
        Assert.Equal(Finger.Thumb, Fingering.Of(crowded, Hand.Medium with { UsesThumb = true }).Value.ByString[0]);
    }

    [Fact]
    public void A_finger_beside_the_clamp_and_one_behind_it_are_priced()
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        Fingering beside = Fingering.Of(Voicing.Parse(setup, "200000").Value).Value;
        Fingering behind = Fingering.Of(Voicing.Parse(setup, "100000", allowBehindClamp: true).Value).Value;
        Fingering above = Fingering.Of(Voicing.Parse(setup, "300000").Value).Value;
        Assert.True(above.Difficulty < beside.Difficulty && beside.Difficulty < behind.Difficulty);
        Assert.Contains(beside.Prices, price => price.Words == "one string fretted beside the clamp");
        Assert.Contains(behind.Prices, price => price.Words == "one string fretted behind the clamp");
    }

    [Fact]
    public void Muted_inner_strings_are_priced_and_outer_ones_are_not()
    {
        Setup setup = Setup.Parse("standard").Value;
        Assert.Equal(0.0, Fingering.Of(Voicing.Parse(setup, "xx000x").Value).Value.Difficulty);
        Assert.Equal("one muted string between sounding ones", Fingering.Of(Voicing.Parse(setup, "xx0x00").Value).Value.Prices[^1].Words);
    }

    [Fact]
    public void The_same_shape_is_no_harder_higher_up() =>
        Fretted("standard").Holds(voicing =>
        {
            ClampMove move = ClampMove.Of(voicing.Setup, 1).Value;
            Result<Fingering> low = Fingering.Of(voicing);
            Result<Fingering> high = move.Moved(voicing).Then(moved => Fingering.Of(moved));
            Assert.True(!low.IsGood || !high.IsGood ? !low.IsGood || voicing.Fretting.Stops.Any(stop => stop.Finger?.Number == Fret.Last)
                : high.Value.Difficulty <= low.Value.Difficulty + 1e-9);
        }, count: Trials);

    [Fact]
    public void Every_fretted_string_has_one_finger_and_fingers_keep_their_order() => Anything.Holds(voicing =>
    {
        if (!Fingering.Of(voicing, s_widest with { UsesThumb = true }).TryGet(out Fingering? fingering, out _))
        {
            return;
        }

        Assert.All(voicing.Strings, s =>
            Assert.Equal(s.Stop.IsFretted ? 1 : 0, fingering.Placements.Count(p => p.Strings.Contains(s.Number))));
        Assert.Equal(fingering.Difficulty, fingering.Prices.Sum(price => price.Points));
        FingerPlacement[] fingers = [.. fingering.Placements.Where(p => p.Finger != Finger.Thumb)];
        Assert.All(fingers.Zip(fingers.Skip(1)), pair =>
            Assert.True(pair.First.Finger < pair.Second.Finger && pair.First.Fret <= pair.Second.Fret));
        Assert.All(fingering.Barres, barre => Assert.All(barre.Across.Except(barre.Strings).Strings, number =>
            Assert.True(voicing.Strings.Single(s => s.Number == number) is var s && (s.Pitch is null || s.StoppedAt >= barre.Fret))));
        Assert.All(fingering.Placements, placement => Assert.DoesNotContain(voicing.Setup.Clamps, clamp =>
            clamp.Fret == placement.Fret && clamp.Strings.Strings.Any(placement.Across.Contains)));
    }, count: Trials);

    [Fact]
    public void No_assignment_of_any_finger_to_any_string_is_cheaper() => Anything.Holds(voicing =>
    {
        double naive = NaiveFingering.LeastPoints(voicing, Hand.Large, Neck.Usual);
        Result<Fingering> found = Fingering.Of(voicing, Hand.Large);
        double cost = found.IsGood ? found.Value.Prices.Where(IsOfFingers).Sum(price => price.Points) : double.PositiveInfinity;
        Assert.Equal(naive, cost, 9);

        static bool IsOfFingers(Price price) =>
            !price.Words.Contains("muted", StringComparison.Ordinal) && !price.Words.Contains("the clamp", StringComparison.Ordinal);
    }, count: Trials);

    [Theory]
    [InlineData("small", 90.0)]
    [InlineData(" Medium", 105.0)]
    [InlineData("large", 120.0)]
    [InlineData("98 mm", 98.0)]
    [InlineData("98.5", 98.5)]
    public void Hands_read(string text, double span) => Assert.Equal(span, Hand.Parse(text).Value.SpanMillimetres);

    [Theory]
    [InlineData("huge", "column 1: expected small, medium, large or a span such as 98 mm, found 'huge'")]
    [InlineData("12 mm", "a hand of 12 mm is out of range: from finger 1 to finger 4 it spans 50 to 180 mm")]
    public void Hands_refuse(string text, string words) => Assert.Equal(words, Hand.Parse(text).Fault.ToString());

    private static Gen<Voicing> Anything => Gens.Setups.SelectMany(setup => Gen.Int[1, 12].SelectMany(low => Near(setup, low)));

    private static Gen<Voicing> Fretted(string setup) => Gen.Int[1, 12].SelectMany(low => Near(Setup.Parse(setup).Value, low));

    // Fingers within five frets of each other, as hands have them; higher up nothing could be fingered.
    private static Gen<Voicing> Near(Setup setup, int low) => Gen.Int[-2, 4].Array[setup.StringCount].Select(offsets => Voicing.Create(
        setup,
        Fretting.Of([.. offsets.Select((offset, i) => offset == -2 ? StringStop.Muted
            : offset == -1 || low + offset <= setup.GroundAt(i).Number ? StringStop.Ringing
            : StringStop.At(Fret.Of(low + offset)))]),
        allowBehindClamp: true).Value);
}
