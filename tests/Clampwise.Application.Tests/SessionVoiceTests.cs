using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Sound;
using Clampwise.Sound.Players;

namespace Clampwise.Application.Tests;

public sealed class SessionVoiceTests : IDisposable
{
    private static readonly Setup s_setup = Setup.Parse("standard + 3-5@2").Value;
    private static readonly Voicing s_one = Voicing.Parse(s_setup, "x 0 0 0 3 2").Value;
    private static readonly Voicing s_other = Voicing.Parse(s_setup, "x 0 0 0 3 0").Value;
    private readonly Bench _bench = new();

    [Fact]
    public void A_shape_is_strummed_and_two_come_in_turn()
    {
        Assert.Equal(5, Voice().Question(Playing(s_one))!.Notes.Length);
        Performance both = Voice().Question(Playing(s_one, s_other))!;
        Assert.Equal(10, both.Notes.Length);
        Assert.True(both.Notes[5].Start > both.Notes[4].Start + (both.Notes[4].Start - both.Notes[3].Start), "the second waits for the first");
    }

    [Fact]
    public void A_question_without_sound_and_a_machine_without_sound_play_nothing()
    {
        Assert.Null(Voice().Question(Playing()));
        Assert.Null(Voice().StringByString(Playing()));
        var silent = new SessionVoice(_bench.Open(new CapturedOut { IsAudible = false }));
        Assert.Null(silent.Question(Playing(s_one)));
        Assert.Null(silent.Again(Playing(s_one), 2));
        Assert.Null(silent.StringByString(Playing(s_one)));
        Assert.Null(silent.Reference(Playing(s_one) with { Reference = Voicing.OpenStrings(s_setup) }));
    }

    [Fact]
    public void Slower_spreads_the_same_strings_wider()
    {
        Performance usual = Voice().Again(Playing(s_one), 1)!;
        Performance slow = Voice().Again(Playing(s_one), 3)!;
        Assert.Equal(usual.Notes.Select(note => note.Pitch), slow.Notes.Select(note => note.Pitch));
        Assert.Equal(3 * usual.Notes[^1].Start.TotalSeconds, slow.Notes[^1].Start.TotalSeconds, 1e-3);
    }

    [Fact]
    public void A_reference_is_all_strings_of_the_setup() =>
        Assert.Equal(6, Voice().Reference(Playing(s_one) with { Reference = Voicing.OpenStrings(s_setup) })!.Notes.Length);

    [Fact]
    public void A_wrong_answer_is_played_beside_the_right_one_and_then_what_differs_alone()
    {
        var wrong = new Verdict(false, "D", "Dsus2", s_other) { Answered = s_one, Differing = StringSet.Parse("1", 6).Value };
        Assert.Equal(10, Voice().Verdict(wrong).Notes.Length);
        Assert.All(Voice().Difference(wrong).Notes, note => Assert.Equal("1", note.String.ToString()));
        Assert.Equal(5, Voice().Verdict(wrong with { Answered = null }).Notes.Length);
        Assert.Equal(5, Voice().Difference(wrong with { Answered = null }).Notes.Length);
    }

    public void Dispose() => _bench.Dispose();

    private Question Playing(params Voicing[] played) =>
        new(_bench.Open().Shelf.Everything.Items[0], AnswerForm.Name, "What is it?") { Played = [.. played] };

    private SessionVoice Voice() => new(_bench.Open());
}
