using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>Clean changes made in a minute, counted by the player; both shapes are drawn on one fretboard.</summary>
internal sealed class CountPad(Question question, GlyphSet glyphs) : AnswerPad
{
    private const int MostDigits = 3;
    private string _digits = "";

    public override FretboardPicture Picture => question.Drawn is [var first, var second, ..]
        ? new FretboardPicture(question.Setup, first.Fretting) { Other = second.Fretting, Marked = VoicingComparison.Of(first, second).Moved }
        : new FretboardPicture(question.Setup, question.Subject.Fretting);

    public override IReadOnlyList<PageKey> Keys(Action<Answer> give) =>
    [
        PageKey.Digits(0, 9, "clean changes", digit => _digits += _digits.Length < MostDigits ? $"{digit}" : ""),
        PageKey.On(KeyPress.Enter, "answer", () => Give(give)),
        PageKey.On(KeyPress.Backspace, "one digit back", () => _digits = _digits.Length > 0 ? _digits[..^1] : "").InHelpAlone,
    ];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) =>
    [
        .. question.Drawn.Select((voicing, index) => Line.Of(index == 0 ? $"{glyphs.Finger} " : $"{glyphs.Other} ", index == 0 ? Tone.Finger : Tone.Other)
            .And($"{voicing.ShapeName,-10} ", Tone.Strong).And(voicing.Fretting.ToHomeText(question.Setup))),
        Line.Of("Clean changes in a minute: ", Tone.Quiet).And(_digits, Tone.Strong).And("_", Tone.Cursor),
    ];

    private void Give(Action<Answer> give)
    {
        if (_digits.Length > 0)
        {
            give(new Answer.Changes(int.Parse(_digits)));
        }
    }
}
