using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens.Session;

/// <summary>A name: picked by its number, or typed.</summary>
internal sealed class NamePad(Question question) : AnswerPad
{
    private Entry? _entry = question.Choices.IsEmpty ? Entry.Empty : null;

    public override bool IsTyping => _entry is not null;

    public override FretboardPicture Picture => new(question.Setup, question.Drawn.IsEmpty ? null : question.Drawn[0].Fretting);

    public override IReadOnlyList<(string Key, string Does)> Keys => _entry is null
        ? [($"1-{question.Choices.Length}", "answer"), ("t", "type a name")]
        : question.Choices.IsEmpty ? [("Enter", "answer"), ("Tab", "complete")] : [("Enter", "answer"), ("Tab", "complete"), ("Esc", "choices")];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut)
    {
        if (_entry is null)
        {
            return ChoiceLines(ruledOut);
        }

        string[] completions = [.. _entry.Completions.Where(name => name != _entry.Text).Take(8)];
        return
        [
            Line.Of("Name: ", Tone.Quiet).And(_entry.Text, Tone.Strong).And("_", Tone.Cursor),
            Line.Of(completions.Length > 0 ? $"      {string.Join("  ", completions)}" : "", Tone.Quiet),
        ];
    }

    public override PadStep Press(KeyPress key)
    {
        if (_entry is null)
        {
            return PressChoice(key);
        }

        if (key == KeyPress.Enter)
        {
            return _entry.Text.Trim().Length > 0 ? PadStep.With(new Answer.Name(TypedChord.Capitalised(_entry.Text.Trim()))) : PadStep.Used;
        }

        if (key == KeyPress.Esc && !question.Choices.IsEmpty)
        {
            _entry = null;
            return PadStep.Used;
        }

        Entry? next = _entry.Press(key);
        _entry = next ?? _entry;
        return new PadStep(next is not null);
    }

    private PadStep PressChoice(KeyPress key)
    {
        int number = key.Sign - '1';
        if (number >= 0 && number < question.Choices.Length)
        {
            return PadStep.With(new Answer.Chosen(number));
        }

        if (key.Sign is not ('t' or 'T'))
        {
            return PadStep.Nothing;
        }

        _entry = Entry.Empty;
        return PadStep.Used;
    }

    private IEnumerable<Line> ChoiceLines(IReadOnlySet<int> ruledOut) => question.Choices.Select((choice, index) => ruledOut.Contains(index)
        ? Line.Of($"   {index + 1}  ", Tone.Quiet).And($"{choice.Text} (ruled out)", Tone.Quiet)
        : Line.Of($"   {index + 1}  ", Tone.Key).And(choice.Text, Tone.Strong));
}
