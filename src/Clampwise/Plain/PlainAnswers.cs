using System.Globalization;
using System.Text.RegularExpressions;
using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>Reads a typed line as the answer to a question, as a grade, or as the reason of a skip.</summary>
internal static partial class PlainAnswers
{
    private static readonly (string Word, SkipReason Reason)[] s_reasons =
    [
        ("now", SkipReason.NotNow), ("hand", SkipReason.HandNeedsRest), ("guitar", SkipReason.NoInstrument),
        ("listen", SkipReason.CannotListen), ("wrong", SkipReason.LooksWrong),
    ];

    /// <summary>The reasons of a skip as they are typed, for help texts: <c>skip now: not now</c>.</summary>
    public static string Reasons => string.Join("; ", s_reasons.Select(entry =>
        $"skip {entry.Word}: {SessionInWords.Reasons.First(reason => reason.Reason == entry.Reason).Words}"));

    /// <summary>The answer, or what would be one.</summary>
    public static Result<Answer> Read(Question question, TypedLine line)
    {
        string text = line.Text.Trim();
        bool isNumber = int.TryParse(text.TrimEnd('.'), NumberStyles.None, CultureInfo.InvariantCulture, out int number);
        return question.Form switch
        {
            AnswerForm.Compare => Compared(line, question.Setup.StringCount),
            AnswerForm.CountChanges => isNumber ? new Answer.Changes(number) : new Fault($"expected a number of changes, 0 or more, found '{text}'"),
            AnswerForm.Place or AnswerForm.Play => Placed(text, question.Setup),
            _ when isNumber && number >= 1 && number <= question.Choices.Length => new Answer.Chosen(number - 1),
            _ when question.Direction.PicksShape() => Picked(question, text),
            _ when isNumber && question.Choices.Length > 0 => new Fault($"expected 1 to {question.Choices.Length} or a name, found {number}"),
            _ => new Answer.Name(TypedChord.Capitalised(text)),
        };
    }

    /// <summary>A grade by its word; null if the line is none. A number is none: a script one line ahead must not change what counts.</summary>
    public static Grade? Grade(TypedLine line) =>
        line.Words.Count == 1 && Enum.GetValues<Grade>().Cast<Grade?>().FirstOrDefault(grade => PlainText.Word(grade!.Value) == line.First) is { } named ? named : null;

    /// <summary>Why a question is skipped: a word or a number after <c>skip</c>; not now if nothing is said.</summary>
    public static Result<SkipReason> Reason(TypedLine line)
    {
        if (line.Words.Count == 1)
        {
            return SkipReason.NotNow;
        }

        TypedWord word = line.Words[1];
        bool isNumber = int.TryParse(word.Plain, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= s_reasons.Length;
        int at = isNumber ? number - 1 : Array.FindIndex(s_reasons, entry => entry.Word == word.Plain);
        return at >= 0 ? s_reasons[at].Reason : new Fault($"expected one of {Reasons}; found '{word.Text}'", word.Column);
    }

    // What is too short or too long has its fault nowhere on the line: all of it is not what is wanted.
    private static Result<Answer> Placed(string text, Setup setup) => Fretting.Parse(text.Replace(',', ' '), setup).TryGet(out Fretting fretting, out Fault? fault)
        ? new Answer.Placed(fretting)
        : fault.Column is { } column && column <= text.Length ? fault : new Fault(PlainText.WantedShape(setup, text));

    // A shape is picked by its number, or by playing it out in text.
    private static Result<Answer> Picked(Question question, string text)
    {
        if (!Fretting.Parse(text, question.Setup).TryGet(out Fretting fretting, out Fault? fault))
        {
            return fault with { Message = $"expected 1 to {question.Choices.Length} or one of these shapes as text: {fault.Message}" };
        }

        int at = question.Choices.ToList().FindIndex(choice => choice.Voicing.Fretting == fretting);
        return at >= 0 ? new Answer.Chosen(at) : new Fault($"expected 1 to {question.Choices.Length}: {text} is none of these shapes");
    }

    private static Result<Answer> Compared(TypedLine line, int stringCount)
    {
        string words = line.InShort.TrimEnd('.');
        if (words is "same" or "the same")
        {
            return new Answer.Compared(true, default);
        }

        if (words is "different" or "differ")
        {
            return new Answer.Compared(false, default);
        }

        Match moved = Moved().Match(line.Text);
        return moved.Success
            ? StringSet.Parse(moved.Groups["strings"].Value.Replace("and", ",", StringComparison.OrdinalIgnoreCase), stringCount)
                .Select<Answer>(strings => new Answer.Compared(false, strings))
                .TryGet(out Answer? answer, out Fault? fault) ? answer : fault.ShiftedBy(moved.Groups["strings"].Index)
            : new Fault($"expected same, or different with the strings that moved (different 3), found '{line.Text.Trim()}'", line.Words[0].Column);
    }

    // 'different 3', 'different, strings 3 and 4', 'string 3', or the strings alone.
    [GeneratedRegex(@"^\s*(different\s*,?)?\s*(strings?\b)?\s*(?<strings>\d[\d,\- ]*(and\s*\d\s*)?)\.?\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex Moved();
}
