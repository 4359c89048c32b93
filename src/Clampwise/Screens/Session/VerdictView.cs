using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;

namespace Clampwise.Screens.Session;

/// <summary>A verdict on the screen: what it was, both its names, how the answer differs.</summary>
internal sealed class VerdictView(Verdict verdict, Grade grade, Question question, Desk desk)
{
    private const int WordRows = 6;
    private bool _showsAnswer;

    public Verdict Verdict => verdict;

    public IReadOnlyList<(string Key, string Does)> Keys => HasOther
        ? [("Enter", "next"), ("r", "again"), ("d", "what differs"), ("y", _showsAnswer ? "the right one" : "yours"), ("u", "undo"), ("1-4", "grade"), ("p", "pause")]
        : [("Enter", "next"), ("r", "again"), ("d", "string by string"), ("u", "undo"), ("1-4", "grade"), ("p", "pause")];

    private bool HasOther => verdict.Answered is { } other && other.Fretting != verdict.Right.Fretting && other.Setup.Equals(verdict.Right.Setup);

    public VerdictView With(Grade changed) => new(verdict, changed, question, desk);

    /// <summary>Turns between the right shape and the one answered.</summary>
    public bool Turn()
    {
        _showsAnswer = HasOther && !_showsAnswer;
        return HasOther;
    }

    public IEnumerable<Line> Draw(int width, int height)
    {
        Voicing shown = _showsAnswer ? verdict.Answered! : verdict.Right;
        var picture = new FretboardPicture(question.Setup, shown.Fretting) { Marked = verdict.IsCorrect ? default : verdict.Differing, Notes = VoicingNotes.Of(shown) };
        List<Line> lines = [.. desk.Draw(picture, width, height - WordRows), Headline()];
        lines.Add(Line.Of("shape ", Tone.Quiet).And(shown.ShapeName, Tone.Strong).And($"  {shown.Fretting.ToHomeText(shown.Setup)}", Tone.Quiet)
            .And("   sounds ", Tone.Quiet).And(shown.SoundingName, Tone.Strong).And(_showsAnswer ? "   (yours)" : "", Tone.Wrong));
        if (verdict.Remark is { } remark)
        {
            lines.AddRange(Line.Wrap(remark, width));
        }

        if (question.Item.Subject.Note is { } note && lines.Count < height)
        {
            lines.AddRange(Line.Wrap(note, width, Tone.Quiet));
        }

        return lines;
    }

    private Line Headline()
    {
        Line head = verdict.IsCorrect
            ? Line.Of(verdict.IsPartly ? "Right in part. " : "Right. ", Tone.Right)
            : Line.Of(verdict.DidNotKnow ? "Now you know: " : "Not this time: ", Tone.Wrong).And($"it is {verdict.Expected}. ", Tone.Strong);
        bool saysGiven = !verdict.DidNotKnow && verdict.Given.Length > 0 && (!verdict.IsCorrect || verdict.Given != verdict.Expected);
        return (saysGiven ? head.And($"{(question.Form == AnswerForm.Place ? "You placed" : "You said")} {verdict.Given}. ") : head).And($"Grade: {Words(grade)}", Tone.Quiet);
    }

    private static string Words(Grade grade) => grade.ToString().ToLowerInvariant();
}
