using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>Reads a typed line as the answer to a question.</summary>
internal static class PlainAnswers
{
    public static Result<Answer> Read(Question question, string line)
    {
        bool isNumber = int.TryParse(line, out int number);
        return question.Form switch
        {
            AnswerForm.Compare => Compared(line, question.Setup.StringCount),
            AnswerForm.CountChanges => isNumber && number >= 0 ? new Answer.Changes(number) : new Fault($"expected a number of changes, found '{line}'"),
            AnswerForm.Place => Fretting.Parse(line, question.Setup).Select<Answer>(fretting => new Answer.Placed(fretting)),
            _ when isNumber && question.Choices.Length > 0 => number >= 1 && number <= question.Choices.Length
                ? new Answer.Chosen(number - 1)
                : new Fault($"expected 1 to {question.Choices.Length} or a name, found {number}"),
            _ => new Answer.Name(line),
        };
    }

    private static Result<Answer> Compared(string line, int stringCount)
    {
        string[] words = line.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries);
        return words switch
        {
            ["same"] => new Answer.Compared(true, default),
            ["different"] => new Answer.Compared(false, default),
            ["different", var strings] => StringSet.Parse(strings, stringCount).Select<Answer>(moved => new Answer.Compared(false, moved)),
            _ => new Fault($"expected same, or different with the strings that moved (different 3), found '{line}'"),
        };
    }
}
