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

    public override IReadOnlyList<PageKey> Keys(Action<Answer> give) =>
    [
        PageKey.On('s', "the same", () => give(new Answer.Compared(true, default))),
        PageKey.Digits(1, question.Setup.StringCount, "string that moved", number => Turn(StringNumber.Of(number))),
        PageKey.On(KeyPress.Enter, "answer", () => give(new Answer.Compared(false, _moved))),
    ];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) =>
    [
        Line.Of("   s  ", Tone.Key).And("the same", Tone.Strong),
        Line.Of($" 1-{question.Setup.StringCount}  ", Tone.Key).And("different: mark the strings that moved, then Enter", Tone.Strong),
        Line.Of(_moved.Count > 0 ? $"      moved: string {_moved}" : "", Tone.Quiet),
    ];

    private void Turn(StringNumber number)
    {
        var pressed = StringSet.Of([number]);
        _moved = _moved.Contains(number) ? _moved.Except(pressed) : _moved.Union(pressed);
    }
}
