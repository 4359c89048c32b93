using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Screens;

namespace Clampwise.Plain;

/// <summary>What plain sessions say.</summary>
internal static class PlainText
{
    public static IReadOnlyList<string> Help { get; } =
    [
        "Answer with the number of a choice, a chord name, or a fretting: from the nut (x04600) or after ^ from the home clamp (^ x 0 2 4 0 0), lowest string first.",
        "For two voicings: same, or different with the strings that moved (different 3).",
        "Also: hint, again, slower, strings (one after another), open (all open strings), question (say it once more), skip, don't know, end.",
        .. Cautions.All,
    ];

    public static IEnumerable<string> Question(Question question)
    {
        yield return $"Setup {question.Setup}.";
        foreach (Voicing drawn in question.Drawn)
        {
            yield return $"Shape {drawn.Fretting.ToHomeText(drawn.Setup)}, from the nut {drawn.Fretting}.";
            foreach (string line in Strings(drawn))
            {
                yield return line;
            }
        }

        yield return question.Ask;
        for (int i = 0; i < question.Choices.Length; i++)
        {
            yield return $"{i + 1}: {question.Choices[i].Text}";
        }
    }

    public static IEnumerable<string> Verdict(Verdict verdict, Grade grade, Question question)
    {
        yield return verdict.IsCorrect
            ? verdict.IsPartly ? "Right in part." : "Right."
            : verdict.DidNotKnow ? $"It is {verdict.Expected}." : $"Not this time: it is {verdict.Expected}, you said {verdict.Given}.";
        yield return $"Shape name {verdict.Right.ShapeName}, sounds {verdict.Right.SoundingName}, played {verdict.Right.Fretting.ToHomeText(verdict.Right.Setup)}.";
        foreach (string line in VoicingWords.Lines(verdict.Right))
        {
            yield return line;
        }

        if (verdict.Remark is { } remark)
        {
            yield return remark;
        }

        if (question.Item.Subject.Note is { } note)
        {
            yield return note;
        }

        yield return $"Grade: {grade.ToString().ToLowerInvariant()}. Enter for the next question.";
    }

    public static IEnumerable<string> Summary(SessionSummary summary)
    {
        yield return "";
        yield return summary.Words;
        yield return string.Join(", ", Enum.GetValues<Grade>().Reverse().Select(grade => $"{grade.ToString().ToLowerInvariant()} {summary.Grades[grade]}"));
        foreach (Outcome missed in summary.Missed)
        {
            yield return $"Look at again: {missed.Planned.Item.Subject.Voicing.ShapeName}, {missed.Planned.Item.Key.Direction.Title()}.";
        }

        yield return $"{summary.DueTomorrow} due on the next practice day. Take the clamp off, and give hands and ears a rest.";
    }

    // Without pitches and degrees: they would give the answer away.
    private static IEnumerable<string> Strings(Voicing voicing) => voicing.Strings.Select(sounding =>
    {
        string held = sounding.IsHeld ? $"held by the clamp at fret {sounding.Ground}" : "free";
        return sounding.Stop switch
        {
            { IsMuted: true } => $"string {sounding.Number} muted",
            { IsRinging: true } => $"string {sounding.Number} {held}, rings",
            var stop => $"string {sounding.Number} {held}, finger at fret {stop.Finger}",
        };
    });
}
