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
        FoundHands found = s_clamped.FindHands(Query(name) with { Limit = 30 }).Value;
        Assert.Equal(30, found.Hands.Length);
        Assert.All(found.Hands, one => Assert.DoesNotContain(found.Hands, other => FoundHand.IsThinning(one.Whole, other.Whole)));
    }

    [Fact]
    public void Folded_members_all_fit_and_none_is_lost_or_doubled()
    {
        VoicingQuery query = Query("A") with { Limit = 1_000_000 };
        FoundHands hands = s_standard.FindHands(query).Value;
        FindResult all = s_standard.Find(query).Value;
        Fretting[] members = [.. hands.Hands.SelectMany(hand => hand.Thinnings.Append(hand.Whole)).Select(found => found.Voicing.Fretting)];
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
        FoundVoicing Judged(string fretting) => s_standard.Judge(Voicing.Parse(s_standard.Setup, fretting).Value, Query("F")).Value;
        Assert.False(FoundHand.IsThinning(Judged("xx3211"), Judged("133211")));
        Assert.True(FoundHand.IsThinning(Judged("13321x"), Judged("133211")));
        Assert.False(FoundHand.IsThinning(Judged("133211"), Judged("13321x")));
    }

    [Fact]
    public void A_wrong_limit_is_refused_and_none_asked_for_counts_only()
    {
        Assert.Equal(
            "the number of voicings to show is -1: give 0 or more", s_standard.FindHands(new VoicingQuery { Limit = -1 }).Fault.ToString());
        Assert.Empty(s_standard.FindHands(Query("E") with { Limit = 0 }).Value.Hands);
    }

    private static VoicingQuery Query(string name) => new() { SoundingName = ChordSymbol.Parse(name).Value };
}
