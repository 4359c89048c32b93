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

    public override IReadOnlyList<PageKey> Keys(Action<Answer> give)
    {
        (PageKey move, PageKey finger, PageKey mute, PageKey ring, PageKey clear) = _hand.Keys(Place);
        return [PageKey.On(KeyPress.Enter, "answer", () => Give(give)), move, finger, mute, ring, clear.InHelpAlone];
    }

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) =>
        [Line.Of("from the nut ", Tone.Quiet).And(_hand.Fretting.ToString()).And("   from the clamp ", Tone.Quiet).And(_hand.Fretting.ToHomeText(question.Setup))];

    private void Place(HandOnFretboard hand) => (_isTouched, _hand) = (true, hand);

    // An untouched board is no answer: Enter is pressed too often to go on.
    private void Give(Action<Answer> give)
    {
        if (_isTouched)
        {
            give(new Answer.Placed(_hand.Fretting));
        }
    }
}
