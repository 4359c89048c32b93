using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

public class KeyFinderTests
{
    private static readonly Finder s_clamped = new(Setup.Parse("standard + 3-5@2").Value);

    [Theory]
    [InlineData("standard + 3-5@2")]
    [InlineData("standard + 2-4@2")]
    [InlineData("standard + full@3 + 3-5@5")]
    [InlineData("standard")]
    public void Without_a_name_every_plain_chord_of_the_key_stands_in_the_first_twenty_and_no_cluster_in_the_first_hundred(string text)
    {
        Setup setup = Setup.Parse(text).Value;
        FoundHands found = new Finder(setup).FindHands(new VoicingQuery { Limit = 100 }).Value;
        MusicalKey key = SuggestedKey.Of(setup);
        Assert.Equal(key, found.Key);
        string[] first = [.. found.Hands.Take(20).Select(hand => hand.Whole.Voicing.ShapeName)];
        Assert.All(KeyDegree.Of(key), degree => Assert.Contains(degree.In(key).ToString(), first));
        Assert.All(found.Hands, hand => Assert.DoesNotMatch("[#b](9|11|13)|dim|aug", hand.Whole.Voicing.ShapeName));
    }

    [Fact]
    public void An_altered_chord_is_still_found_by_its_name_and_counted_without_one()
    {
        ChordSymbol asked = ChordSymbol.Parse("E(add#11,no3)").Value;
        Assert.NotEmpty(s_clamped.FindHands(new VoicingQuery { ShapeName = asked }).Value.Hands);
        Assert.Equal(
            s_clamped.Find(new VoicingQuery { Limit = 0 }).Value.Total,
            s_clamped.FindHands(new VoicingQuery { Limit = 5 }).Value.Total);
    }

    [Theory]
    [InlineData("D")]
    [InlineData("G")]
    [InlineData("Bm")]
    public void The_page_of_a_key_holds_hands_that_sound_each_degree(string text)
    {
        MusicalKey key = MusicalKey.Parse(text).Value;
        KeyHands page = s_clamped.FindKey(new VoicingQuery { Key = key }).Value;
        Assert.Equal(7, page.Degrees.Length);
        Assert.Equal(key, page.Key);
        Assert.All(page.Degrees, degree =>
        {
            Assert.InRange(degree.Hands.Length, 1, 3);
            Assert.Equal(degree.Shape.TransposedBy(2).Root.Class, degree.Sounding.Root.Class);
            Assert.All(degree.Hands, hand => Assert.Equal(degree.Shape.Tones.Select(tone => tone.Note.Class).ToHashSet(), [.. hand.Whole.Voicing.Shape.Pitches.Select(pitch => pitch.Class)]));
            Assert.All(degree.Hands, hand => Assert.True(hand.Whole.Voicing.Pitches.Length >= 4));
        });
    }

    // What a teacher says of C under this clamp (judgement of the trade, no source).
    [Fact]
    public void Where_a_chord_is_hard_its_near_miss_is_said()
    {
        KeyHands page = s_clamped.FindKey(new VoicingQuery()).Value;
        Assert.Equal("D", page.Key.ToString());
        Assert.Equal("C takes four fingers; x54030 is Cadd9 and rings", page.Degrees.Single(degree => degree.Degree.Roman == "bVII").NearMissWords);
        Assert.Equal("", page.Degrees[0].NearMissWords);
    }

    [Fact]
    public void A_key_says_what_its_points_are_for()
    {
        FoundVoicing Judged(string fretting) => s_clamped.Judge(Voicing.Parse(s_clamped.Setup, fretting).Value, new VoicingQuery()).Value;
        Assert.Contains(Judged("x46400").Reasons, reason => reason.Words == "colour of vi in D");
        Assert.Contains(Judged("400400").Reasons, reason => reason.Words == "an inversion");
        Assert.DoesNotContain(Judged("006400").Reasons, reason => reason.Words.Contains(" in D", StringComparison.Ordinal));
    }
}
