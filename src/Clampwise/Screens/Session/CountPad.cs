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

    public override IReadOnlyList<(string Key, string Does)> Keys { get; } = [("0-9", "clean changes"), ("Enter", "answer")];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) =>
    [
        .. question.Drawn.Select((voicing, index) => Line.Of(index == 0 ? $"{glyphs.Finger} " : $"{glyphs.Other} ", index == 0 ? Tone.Finger : Tone.Other)
            .And($"{voicing.ShapeName,-10} ", Tone.Strong).And(voicing.Fretting.ToHomeText(question.Setup))),
        Line.Of("Clean changes in a minute: ", Tone.Quiet).And(_digits, Tone.Strong).And("_", Tone.Cursor),
    ];

    public override PadStep Press(KeyPress key)
    {
        if (key == KeyPress.Enter)
        {
            return _digits.Length > 0 ? PadStep.With(new Answer.Changes(int.Parse(_digits))) : PadStep.Used;
        }

        if (key == KeyPress.Backspace)
        {
            _digits = _digits.Length > 0 ? _digits[..^1] : "";
            return PadStep.Used;
        }

        char sign = key.Sign;
        bool isDigit = sign is >= '0' and <= '9' && _digits.Length < MostDigits;
        _digits += isDigit ? sign : "";
        return new PadStep(isDigit);
    }
}
