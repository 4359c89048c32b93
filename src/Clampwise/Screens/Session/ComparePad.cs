using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>Two voicings heard: the same, or which strings moved.</summary>
internal sealed class ComparePad(Question question) : AnswerPad
{
    private StringSet _moved;

    public override FretboardPicture Picture => new(question.Setup, null) { Marked = _moved };

    public override IReadOnlyList<(string Key, string Does)> Keys => [("s", "the same"), ($"1-{question.Setup.StringCount}", "string that moved"), ("Enter", "answer")];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) =>
    [
        Line.Of("   s  ", Tone.Key).And("the same", Tone.Strong),
        Line.Of($" 1-{question.Setup.StringCount}  ", Tone.Key).And("different: mark the strings that moved, then Enter", Tone.Strong),
        Line.Of(_moved.Count > 0 ? $"      moved: string {_moved}" : "", Tone.Quiet),
    ];

    public override PadStep Press(KeyPress key)
    {
        if (key.Sign is 's' or 'S')
        {
            return PadStep.With(new Answer.Compared(true, default));
        }

        if (key == KeyPress.Enter)
        {
            return PadStep.With(new Answer.Compared(false, _moved));
        }

        int number = key.Sign - '0';
        if (number < 1 || number > question.Setup.StringCount)
        {
            return PadStep.Nothing;
        }

        var pressed = StringSet.Of([StringNumber.Of(number)]);
        _moved = _moved.Contains(StringNumber.Of(number)) ? _moved.Except(pressed) : _moved.Union(pressed);
        return PadStep.Used;
    }
}
