using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;

namespace Clampwise.Screens.Session;

/// <summary>The wording of the session page.</summary>
internal static class SessionText
{
    public static IReadOnlyList<string> Help { get; } =
    [
        "Each question shows a shape, plays a voicing or gives a name, and asks for the other side. The shape name is counted from the home clamp; the sounding name is at concert pitch. Any correct reading of a chord is taken, in either spelling.",
        "Answer with the number of a choice, or press t and type a name (Tab completes it, and goes on through all that fit; the first letter needs no Shift). To place a shape: " + HandOnFretboard.KeyWords + ", Enter answers. Any shape that a hand can play and that bears the name is right.",
        "With the guitar in hand a card says where the clamp goes and the clock waits for you; a name is played: Enter shows and plays the shape, then 1 to 4 say how it went, by your own judgement. i turns to placing on the screen and back; the settings keep it. A new shape comes on a card first, and is asked a few questions later.",
        "r plays again, l slower, g string by string, e all open strings; none of them costs anything. h gives a hint, k says that you don't know, n skips, p or Esc stops the clock. While you type, F2 to F8 do the same.",
        "After the verdict: r plays yours and the right one, d only the strings that differ. y turns between the two shapes, b draws both on one fretboard, and says string by string what differs. u takes the answer back. Up and Down change the grade, if you know better how it went:",
        .. SessionInWords.GradesInWords,
    ];

    /// <summary>Time left, or questions left where there is no clock.</summary>
    public static string Progress(SessionState state, Moment now)
    {
        string answered = $"{state.Outcomes.Length} answered";
        return state.LeftAt(now) is { } left
            ? $"{answered}   {SessionInWords.Clock(left > TimeSpan.Zero ? left : TimeSpan.Zero)} left"
            : $"{answered}   {state.Queue.Length + state.Close.Length + (state.Phase == SessionPhase.Asking ? 1 : 0)} to come";
    }

    public static IEnumerable<Line> Head(OpenQuestion open, int width)
    {
        Setup setup = open.Question.Setup;
        string part = SessionInWords.Part(open.Planned.Part);
        yield return Line.Of($"{setup}", Tone.Held).And($"   {open.Planned.Item.Drill.Title}{(part.Length > 0 ? $" ({part})" : "")}", Tone.Quiet);
        foreach (Line line in Line.Wrap(open.Question.Ask, width, Tone.Strong))
        {
            yield return line;
        }

        yield return Line.Empty;
    }

    public static IReadOnlyList<Line> Paused(SessionState state, Moment now, int width) =>
    [
        Line.Empty,
        .. Line.Wrap($"The clock stands at {SessionInWords.Clock(state.Clock.At(now))}. Everything answered so far is kept.", width, Tone.Strong),
        Line.Empty,
        Line.Of("Let the hands hang for a moment."),
        Line.Empty,
        Line.Of("  Enter  ", Tone.Key).And("go on where you were"),
        Line.Of("  e      ", Tone.Key).And("end the session here, with its summary"),
        Line.Of("  Esc    ", Tone.Key).And("back to today; the session waits there"),
    ];

    public static IEnumerable<Line> SkipReasons() => SessionInWords.Reasons
        .Select((reason, index) => Line.Of($"   {index + 1}  ", Tone.Key).And(reason.Words))
        .Prepend(Line.Of("Skip it because:", Tone.Strong));
}
