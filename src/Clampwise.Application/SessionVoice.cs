using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Sound;
using Clampwise.Sound.Performing;

namespace Clampwise.Application;

/// <summary>What a session plays.</summary>
internal sealed class SessionVoice(Desk desk)
{
    private PlayingStyle Style => desk.Settings.Style;

    /// <summary>The sound of a question; null if it has none or nothing can be heard.</summary>
    public Performance? Question(Question question) => Again(question, 1);

    /// <summary>The same once more, so many times slower.</summary>
    public Performance? Again(Question question, double slower) => desk.Sound.IsAudible ? question.Played switch
    {
        [] => null,
        [var one] => Perform.Strum(one, StrumDirection.Down, Style.Slower(slower)),
        [var first, var second, ..] => Perform.InTurn(first, second, Style.Slower(slower)),
    } : null;

    /// <summary>The question one string after another.</summary>
    public Performance? StringByString(Question question) => desk.Sound.IsAudible && !question.Played.IsEmpty
        ? question.Played.Select(voicing => Perform.Arpeggio(voicing, ArpeggioPattern.Upward, Style)).Aggregate((one, next) => one.Then(next, one.End))
        : null;

    /// <summary>All strings of the setup, to set the ear.</summary>
    public Performance? Reference(Question question) => desk.Sound.IsAudible && question.Reference is { } open
        ? Perform.Strum(open, StrumDirection.Down, Style)
        : null;

    /// <summary>A shape strummed; null if nothing can be heard.</summary>
    public Performance? Shape(Voicing voicing) => desk.Sound.IsAudible ? Perform.Strum(voicing, StrumDirection.Down, Style) : null;

    /// <summary>A new shape whole and string by string; null for clamps that move, and if nothing can be heard.</summary>
    public Performance? Card(Card card) => card switch
    {
        _ when !desk.Sound.IsAudible => null,
        Card.NewShape { Item.Subject.Voicing: var shape } => Perform.Strum(shape, StrumDirection.Down, Style) is var whole
            ? whole.Then(Perform.Arpeggio(shape, ArpeggioPattern.Upward, Style), whole.End)
            : null,
        _ => null,
    };

    /// <summary>What belongs to a verdict: a wrong answer beside the right one, else the right one alone.</summary>
    public Performance Verdict(Verdict verdict) => verdict.ToPlay switch
    {
        [var first, var second, ..] => Perform.InTurn(first, second, Style),
        [var one] => Perform.Strum(one, StrumDirection.Down, Style),
        _ => Performance.Silence,
    };

    /// <summary>Only the strings that differ between the answer and what was right.</summary>
    public Performance Difference(Verdict verdict) => verdict.Answered is { } answered
        ? Perform.OnlyWhatDiffers(answered, verdict.RightVoicing, Style)
        : StringsOf(verdict.RightVoicing);

    private Performance StringsOf(Voicing voicing) => Perform.Arpeggio(voicing, ArpeggioPattern.Upward, Style);
}
