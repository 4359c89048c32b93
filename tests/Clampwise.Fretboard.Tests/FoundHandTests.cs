using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

public class FoundHandTests
{
    private static readonly Finder s_clamped = new(Setup.Parse("standard + 3-5@2").Value);
    private static readonly Finder s_standard = new(Setup.Parse("standard").Value);

    [Theory]
    [InlineData("E")]
    [InlineData("B7")]
    [InlineData("F#m")]
    public void No_hand_of_a_list_is_a_thinning_of_another(string name)
    {
        FoundHands found = s_clamped.FindHands(Query(name) with { Limit = 20 }).Value;
        Assert.Equal(20, found.Hands.Length);
        Assert.All(found.Hands, one => Assert.DoesNotContain(found.Hands, other => IsEasilyFolded(one.Whole, other.Whole)));
    }

    [Fact]
    public void Folded_members_all_fit_and_none_is_lost_or_doubled()
    {
        VoicingQuery query = Query("A") with { Limit = 1_000_000 };
        FoundHands hands = s_standard.FindHands(query).Value;
        FindResult all = s_standard.Find(query).Value;
        Fretting[] members = [.. hands.Hands.SelectMany(hand => hand.Thinnings.Concat(hand.Variants).Append(hand.Whole.Voicing)).Select(voicing => voicing.Fretting)];
        Assert.Equal(all.Total, hands.Total);
        Assert.Equal(members.Length, members.Distinct().Count());
        Assert.True(members.ToHashSet().SetEquals(all.Voicings.Select(found => found.Voicing.Fretting)));
    }

    [Fact]
    public void An_open_shape_says_which_string_may_be_left_out()
    {
        FoundHand hand = s_standard.FindHands(Query("Em")).Value.Hands.Single(hand => $"{hand.Whole.Voicing.Fretting}" == "022000");
        // Not without string 6, the bass, and not without string 3, the only third.
        Assert.Equal("also without string 5, 4, 2, 1", hand.AlsoWithout);
    }

    [Fact]
    public void A_much_easier_part_of_a_barre_is_a_hand_of_its_own()
    {
        string[] hands = [.. s_standard.FindHands(Query("F")).Value.Hands.Select(hand => $"{hand.Whole.Voicing.Fretting}")];
        Assert.Contains("xx3211", hands);
        Assert.Contains("133211", hands);
        Assert.DoesNotContain("13321x", hands);
    }

    [Fact]
    public void Hands_that_differ_in_an_open_string_alone_share_a_line_and_a_familiar_grip_keeps_its_own()
    {
        FoundHand hand = s_clamped.FindHands(new VoicingQuery { ShapeName = ChordSymbol.Parse("Gadd9").Value }).Value.Hands[0];
        Assert.Equal("540000", $"{hand.Whole.Voicing.Fretting}");
        Assert.Contains("540400", hand.Variants.Select(variant => $"{variant.Fretting}"));
        string[] minor = [.. s_standard.FindHands(Query("Em7")).Value.Hands.Take(5).Select(one => $"{one.Whole.Voicing.Fretting}")];
        Assert.Contains("022030", minor);
        Assert.Contains("020000", minor);
    }

    [Fact]
    public void A_wrong_limit_is_refused_and_none_asked_for_counts_only()
    {
        Assert.Equal(
            "the number of voicings to show is -1: give 0 or more", s_standard.FindHands(new VoicingQuery { Limit = -1 }).Fault.ToString());
        Assert.Empty(s_standard.FindHands(Query("E") with { Limit = 0 }).Value.Hands);
    }

    // A string that is left out above the bass, and no finger saved that would be missed.
    private static bool IsEasilyFolded(FoundVoicing thin, FoundVoicing full)
    {
        (StringStop Thin, StringStop Full)[] pairs = [.. thin.Voicing.Fretting.Stops.Zip(full.Voicing.Fretting.Stops)];
        int left = Array.FindLastIndex(pairs, pair => pair.Thin.IsMuted && !pair.Full.IsMuted);
        return left > Array.FindIndex(pairs, pair => !pair.Thin.IsMuted)
            && pairs.All(pair => pair.Thin == pair.Full || pair.Thin.IsMuted)
            && thin.Voicing.Pitches.Min().Class == full.Voicing.Pitches.Min().Class
            && full.Fingering.Difficulty - thin.Fingering.Difficulty < 1.5;
    }

    private static VoicingQuery Query(string name) => new() { SoundingName = ChordSymbol.Parse(name).Value };
}
