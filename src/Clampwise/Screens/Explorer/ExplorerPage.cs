using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Theory;
using Terminal.Gui.Input;

namespace Clampwise.Screens;

/// <summary>A fretboard to walk on: what the hand does, how it sounds, and both names at every step.</summary>
internal sealed class ExplorerPage(Shell shell, Desk desk, Setup setup) : Page
{
    private const int WordRows = 8;
    private HandOnFretboard _hand = HandOnFretboard.Start(setup);

    public override string Title => "explore";

    public override string Corner => _hand.Setup.ToString();

    public override IReadOnlyList<(string Key, string Does)> Keys { get; } =
        [("arrows", "move"), ("Space", "finger"), ("x", "mute"), ("o", "ring"), (".", "clear"), ("Esc", "back"), ("?", "help")];

    public override IReadOnlyList<string> Help { get; } =
    [
        "Walk on the fretboard and read both names of what you hold: the shape name, counted from the home clamp, and the sounding name at concert pitch.",
        $"Keys: {HandOnFretboard.KeyWords}.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        Result<Voicing> voicing = Voicing.Create(_hand.Setup, _hand.Fretting, allowBehindClamp: true);
        var picture = new FretboardPicture(_hand.Setup, _hand.Fretting)
        {
            Cursor = (_hand.Number, _hand.Fret),
            Notes = voicing.IsGood ? [.. voicing.Value.Strings.Select(s => s.Pitch?.ToString() ?? "")] : [],
        };
        return
        [
            Line.Empty,
            .. desk.Draw(picture, width, height - WordRows),
            Line.Empty,
            FretboardDrawing.Legend(desk.Glyphs),
            Line.Empty,
            .. voicing.TryGet(out Voicing? good, out Fault? fault) ? Names(good) : [Line.Of(fault.Message, Tone.Wrong)],
        ];
    }

    public override bool Press(Key key)
    {
        if (key == Key.Esc)
        {
            shell.Close();
            return true;
        }

        HandOnFretboard? next = _hand.Press(key);
        _hand = next ?? _hand;
        return next is not null;
    }

    private static IEnumerable<Line> Names(Voicing voicing) =>
    [
        Line.Of("shape name     ", Tone.Quiet).And(voicing.ShapeName, Tone.Strong),
        Line.Of("sounding name  ", Tone.Quiet).And(voicing.SoundingName, Tone.Strong),
        Line.Of("from the nut   ", Tone.Quiet).And(voicing.Fretting.ToString()),
        Line.Of("from the clamp ", Tone.Quiet).And(voicing.Fretting.ToHomeText(voicing.Setup)),
    ];
}
