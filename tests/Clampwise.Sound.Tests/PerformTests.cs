using Clampwise.Fretboard;
using Clampwise.Sound.Performing;

namespace Clampwise.Sound.Tests;

public class PerformTests
{
    private static readonly PlayingStyle s_style = PlayingStyle.Standard;
    private static readonly Voicing s_voicing = Make.Voicing("standard + 2-4@2", "x04000");

    [Fact]
    public void A_down_stroke_goes_from_the_lowest_string_up()
    {
        Performance strum = Perform.Strum(s_voicing, StrumDirection.Down, s_style);
        Assert.Equal([5, 4, 3, 2, 1], strum.Notes.Select(note => note.String.Number));
        Assert.Equal([Contact.Nut, Contact.Finger, Contact.Clamp, Contact.Clamp, Contact.Nut], strum.Notes.Select(note => note.Contact));
        Assert.Equal([0, 4, 2, 2, 0], strum.Notes.Select(note => note.StoppedAt.Number));
        Assert.Equal([0.0, 15.0, 30.0, 45.0, 60.0], strum.Notes.Select(note => Math.Round(note.Start.TotalMilliseconds, 6)));
    }

    [Fact]
    public void An_up_stroke_goes_the_other_way_and_spares_the_bass()
    {
        Performance strum = Perform.Strum(s_voicing, StrumDirection.Up, s_style);
        Assert.Equal([1, 2, 3, 4, 5], strum.Notes.Select(note => note.String.Number));
        Assert.True(strum.Notes[^1].Strength.Value < 0.6 * strum.Notes[0].Strength.Value);
    }

    [Theory]
    [InlineData("1 3 5 4", "5 3 1 2")]
    [InlineData("8 1", "1 5")]
    [InlineData("2", "4")]
    public void Arpeggios_pick_in_their_order(string pattern, string strings)
    {
        Performance arpeggio = Perform.Arpeggio(s_voicing, ArpeggioPattern.Parse(pattern).Value, s_style);
        Assert.Equal(strings, string.Join(' ', arpeggio.Notes.Select(note => note.String.Number)));
        Assert.Single(arpeggio.Notes.Select(note => note.End).Distinct());
    }

    [Theory]
    [InlineData("", "column 1: an arpeggio picks 1 to 64 strings, found 0: write them such as 1 3 5 4")]
    [InlineData("1 9", "column 3: expected the place of a sounding string, 1 for the lowest to 8, found '9'")]
    [InlineData("1 x", "column 3: expected the place of a sounding string, 1 for the lowest to 8, found 'x'")]
    public void Bad_arpeggios_are_faults(string pattern, string fault) => Assert.Equal(fault, ArpeggioPattern.Parse(pattern).Fault.ToString());

    [Fact]
    public void Only_the_string_that_differs_is_played_as_in_the_first_and_then_the_second()
    {
        Voicing other = Make.Voicing("standard + 2-4@2", "x05000");
        Assert.Equal("4", s_voicing.SoundsOtherwise(other).ToString());
        Performance both = Perform.OnlyWhatDiffers(s_voicing, other, s_style);
        Assert.Equal(["F#3", "G3"], both.Notes.Select(note => note.Pitch.ToString()));
        Assert.Equal(s_style.Ring + s_style.Gap, both.Notes[1].Start);
        Assert.Empty(Perform.OnlyWhatDiffers(s_voicing, s_voicing, s_style).Notes);
    }

    [Fact]
    public void Two_voicings_in_turn_are_damped_between()
    {
        Performance both = Perform.InTurn(s_voicing, Make.Voicing("standard + 2-4@2", "005000"), s_style);
        TimeSpan second = both.Notes.Where(note => note.Start >= s_style.Ring).Min(note => note.Start);
        Assert.Equal(s_style.Ring + s_style.Gap, second);
        Assert.All(both.Notes.Where(note => note.Start < s_style.Ring), note => Assert.True(note.End <= second));
    }

    [Fact]
    public void A_string_picked_again_is_cut_by_the_pick()
    {
        Performance strum = Perform.Strum(s_voicing, StrumDirection.Down, s_style);
        Performance twice = strum.Then(strum, TimeSpan.FromSeconds(1.0));
        Assert.All(twice.Notes.Where(note => note.Start < TimeSpan.FromSeconds(1.0)), note => Assert.Equal(TimeSpan.FromSeconds(1.0), note.Length));
    }

    [Fact]
    public void Slower_is_longer_at_the_same_pitch()
    {
        Performance strum = Perform.Strum(s_voicing, StrumDirection.Down, s_style);
        Performance slower = strum.Slower(2.5);
        Assert.Equal(strum.Notes.Select(note => note.Pitch), slower.Notes.Select(note => note.Pitch));
        Assert.Equal(strum.End * 2.5, slower.End);
        Assert.Throws<ArgumentOutOfRangeException>(() => strum.Slower(0.5));
    }

    [Fact]
    public void The_same_hand_plays_the_same_and_another_one_differently()
    {
        Performance Strum(int? seed) => Perform.Strum(s_voicing, StrumDirection.Down, s_style with { HandSeed = seed });
        Assert.Equal(Strum(5), Strum(5));
        Assert.NotEqual(Strum(5), Strum(6));
        Assert.NotEqual(Strum(5), Strum(null));
    }

    [Fact]
    public void A_muted_string_alone_is_silence() =>
        Assert.Empty(Perform.SingleString(s_voicing, StringNumber.Of(6), s_style).Notes);
}
