using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;

namespace Clampwise.Screens.Session;

/// <summary>A verdict on the screen: what it was, both its names, how the answer differs.</summary>
internal sealed class VerdictView(Verdict verdict, Grade grade, Question question, ScreenDesk desk)
{
    /// <summary>Rows, beneath the question, that are many enough to keep some free.</summary>
    public const int RoomyRows = 23;

    /// <summary>Rows for words where there are many.</summary>
    public const int RoomyWordRows = 7;

    private const int FewestWordRows = 5;
    public Verdict Verdict => verdict;

    /// <summary>True while the shape answered is drawn.</summary>
    public bool ShowsAnswer { get; private set; }

    /// <summary>True while both are drawn on one fretboard.</summary>
    public bool ShowsBoth { get; private set; }

    /// <summary>True if what was answered can be drawn beside the right shape.</summary>
    public bool HasOther => verdict.Answered is { } other && other.Fretting != verdict.RightVoicing.Fretting && other.Setup.Equals(verdict.RightVoicing.Setup);

    public VerdictView With(Grade changed) => new(verdict, changed, question, desk) { ShowsAnswer = ShowsAnswer, ShowsBoth = ShowsBoth };

    /// <summary>Turns between the right shape and the one answered.</summary>
    public void Turn() => (ShowsAnswer, ShowsBoth) = (HasOther && !ShowsAnswer, false);

    /// <summary>Turns between one shape and both on one fretboard.</summary>
    public void TurnBoth() => (ShowsBoth, ShowsAnswer) = (HasOther && !ShowsBoth, false);

    public IEnumerable<Line> Draw(int width, int height)
    {
        List<Line> lines = ShowsBoth ? DrawBoth(width, height) : DrawOne(width, height);
        // Where both are drawn, what differs stands beside them, string by string.
        string said = $"{verdict.Remark} {(ShowsBoth ? "" : verdict.WhatDiffers)}".Trim();
        if (said.Length > 0)
        {
            lines.AddRange(Line.Wrap(said, width));
        }

        if (question.Item.Subject.Note is { } note && lines.Count < height)
        {
            lines.AddRange(Line.Wrap(note, width, Tone.Quiet));
        }

        return lines;
    }

    private List<Line> DrawOne(int width, int height)
    {
        Voicing shown = ShowsAnswer ? verdict.Answered! : verdict.RightVoicing;
        var picture = new FretboardPicture(question.Setup, shown.Fretting) { Marked = verdict.IsCorrect ? default : verdict.Differing, Notes = VoicingNotes.Of(shown) };
        return
        [
            .. desk.DrawTelling(picture, width, height - Words(height)),
            Headline(),
            Line.Of("shape ", Tone.Quiet).And(shown.ShapeName, Tone.Strong).And($"  {shown.Fretting.ToHomeText(shown.Setup)}", Tone.Quiet)
                .And("   sounds ", Tone.Quiet).And(shown.SoundingName, Tone.Strong).And(ShowsAnswer ? "   (yours)" : "", Tone.Wrong),
        ];
    }

    private List<Line> DrawBoth(int width, int height)
    {
        var two = new TwoVoicings(VoicingComparison.Of(verdict.RightVoicing, verdict.Answered!), "right", "yours");
        IReadOnlyList<Line> board = desk.DrawTelling(two.Picture, width, height - Words(height));
        return [.. board, Headline(), .. two.Words(desk.Glyphs, width, height - board.Count - 1)];
    }

    // As many as the answers of a question take, so that the fretboard stays as it was.
    private static int Words(int height) => height >= RoomyRows ? RoomyWordRows : FewestWordRows;

    private Line Headline()
    {
        Line head = verdict.IsCorrect
            ? Line.Of(verdict.IsPartly ? "Right in part. " : "Right. ", Tone.Right)
            : Line.Of(verdict.DidNotKnow ? "Now you know: " : "Not this time: ", Tone.Wrong).And($"it is {verdict.Expected}. ", Tone.Strong);
        bool saysGiven = !verdict.DidNotKnow && verdict.OwnGrade is null && verdict.Given.Length > 0 && (!verdict.IsCorrect || verdict.Given != verdict.Expected);
        return (saysGiven ? head.And($"{(question.Direction == Direction.NamePlaceShape ? "You placed" : "You said")} {verdict.Given}. ") : head).And($"Grade: {Word(grade)}{(verdict.OwnGrade is null ? "" : ", your own judgement")}", Tone.Quiet);
    }

    private static string Word(Grade grade) => grade.ToString().ToLowerInvariant();
}
