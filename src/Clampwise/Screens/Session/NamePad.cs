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

    public override bool TakesEsc => _entry is not null && !question.Choices.IsEmpty;

    public override IReadOnlyList<PageKey> Keys(Action<Answer> give) => _entry is { } entry
        ?
        [
            PageKey.On(KeyPress.Enter, "answer", () => Give(give, entry)),
            .. entry.Keys(next => _entry = next),
            .. TakesEsc ? [PageKey.On(KeyPress.Esc, "choices", () => _entry = null)] : Array.Empty<PageKey>(),
        ]
        :
        [
            PageKey.Digits(1, question.Choices.Length, "answer", number => give(new Answer.Chosen(number - 1))),
            PageKey.On('t', "type a name", () => _entry = Entry.Empty),
        ];

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

    private static void Give(Action<Answer> give, Entry entry)
    {
        if (entry.Text.Trim() is { Length: > 0 } name)
        {
            give(new Answer.Name(TypedChord.Capitalised(name)));
        }
    }

    private IEnumerable<Line> ChoiceLines(IReadOnlySet<int> ruledOut) => question.Choices.Select((choice, index) => ruledOut.Contains(index)
        ? Line.Of($"   {index + 1}  ", Tone.Quiet).And($"{choice.Text} (ruled out)", Tone.Quiet)
        : Line.Of($"   {index + 1}  ", Tone.Key).And(choice.Text, Tone.Strong));
}
