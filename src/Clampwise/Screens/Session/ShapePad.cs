using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>A shape picked from a few; the one under the cursor is drawn.</summary>
internal sealed class ShapePad(Question question) : AnswerPad
{
    private int _at;

    public override FretboardPicture Picture => new(question.Setup, question.Choices[_at].Voicing.Fretting);

    public override IReadOnlyList<PageKey> Keys(Action<Answer> give) =>
    [
        PageKey.Steps(KeyPress.Up, KeyPress.Down, "look", step => _at = (_at + step + question.Choices.Length) % question.Choices.Length),
        PageKey.On(KeyPress.Enter, "answer", () => give(new Answer.Chosen(_at))),
        PageKey.Digits(1, question.Choices.Length, "answer", number => give(new Answer.Chosen(number - 1))),
    ];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) => question.Choices.Select((choice, index) =>
    {
        string words = choice.Voicing.Fretting.ToHomeText(question.Setup);
        Line number = Line.Of(index == _at ? $" > {index + 1}  " : $"   {index + 1}  ", ruledOut.Contains(index) ? Tone.Quiet : Tone.Key);
        return ruledOut.Contains(index) ? number.And($"{words} (ruled out)", Tone.Quiet) : number.And(words, index == _at ? Tone.Cursor : Tone.Plain);
    });
}
