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

    public override IReadOnlyList<(string Key, string Does)> Keys => [("Up Down", "look"), ("Enter", "answer"), ($"1-{question.Choices.Length}", "answer")];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) => question.Choices.Select((choice, index) =>
    {
        string words = choice.Voicing.Fretting.ToHomeText(question.Setup);
        Line number = Line.Of(index == _at ? $" > {index + 1}  " : $"   {index + 1}  ", ruledOut.Contains(index) ? Tone.Quiet : Tone.Key);
        return ruledOut.Contains(index) ? number.And($"{words} (ruled out)", Tone.Quiet) : number.And(words, index == _at ? Tone.Cursor : Tone.Plain);
    });

    public override PadStep Press(KeyPress key)
    {
        int count = question.Choices.Length;
        if (key == KeyPress.Up || key == KeyPress.Down)
        {
            _at = (_at + (key == KeyPress.Up ? count - 1 : 1)) % count;
            return PadStep.Used;
        }

        if (key == KeyPress.Enter)
        {
            return PadStep.With(new Answer.Chosen(_at));
        }

        int number = key.Sign - '1';
        return number >= 0 && number < count ? PadStep.With(new Answer.Chosen(number)) : PadStep.Nothing;
    }
}
