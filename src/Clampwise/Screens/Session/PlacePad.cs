using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>A shape placed on the fretboard with the cursor keys.</summary>
internal sealed class PlacePad(Question question) : AnswerPad
{
    private bool _isTouched;
    private HandOnFretboard _hand = HandOnFretboard.Start(question.Setup);

    public override FretboardPicture Picture => new(question.Setup, _hand.Fretting) { Cursor = (_hand.Number, _hand.Fret) };

    public override IReadOnlyList<(string Key, string Does)> Keys { get; } =
        [("Enter", "answer"), ("arrows", "move"), ("Space", "finger"), ("x", "mute"), ("o", "ring")];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) =>
        [Line.Of("from the nut ", Tone.Quiet).And(_hand.Fretting.ToString()).And("   from the clamp ", Tone.Quiet).And(_hand.Fretting.ToHomeText(question.Setup))];

    public override PadStep Press(KeyPress key)
    {
        if (key == KeyPress.Enter)
        {
            // An untouched board is no answer: Enter is pressed too often to go on.
            return !_isTouched ? PadStep.Used : PadStep.With(new Answer.Placed(_hand.Fretting));
        }

        HandOnFretboard? next = _hand.Press(key);
        _isTouched |= next is not null;
        _hand = next ?? _hand;
        return new PadStep(next is not null);
    }
}
