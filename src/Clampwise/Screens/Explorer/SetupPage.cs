using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Theory;
using Terminal.Gui.Input;

namespace Clampwise.Screens;

/// <summary>Clamps chosen from common ones or written out, with what the open strings give, live.</summary>
internal sealed class SetupPage : Page
{
    // The clamps that are sold most, in the places where they are used most (common practice, no source).
    private static readonly ImmutableArray<string> s_common =
    [
        "standard + 3-5@2", "standard + 2-4@2", "standard + 1-5@2", "standard + 2-5@2", "standard + 1-4@2", "standard + 4-5@2",
        "standard + 3-5@4", "standard + full@2 + 3-5@4", "standard + full@1 + 2-4@3", "drop D + 1-5@2", "standard + full@2", "standard",
    ];

    private const int LongestText = 60;
    private readonly Shell _shell;
    private readonly Desk _desk;
    private readonly Action<Setup> _choose;
    private string _text;
    private int _at = -1;

    public SetupPage(Shell shell, Desk desk, Setup now, Action<Setup> choose)
    {
        (_shell, _desk, _choose) = (shell, desk, choose);
        _text = now.ToString();
    }

    public override string Title => "clamps";

    public override bool IsTyping => true;

    public override IReadOnlyList<(string Key, string Does)> Keys { get; } =
        [("Up Down", "common ones"), ("F2", "full capo down"), ("F3", "full capo up"), ("F4", "turn round"), ("Enter", "take it"), ("Esc", "back")];

    public override IReadOnlyList<string> Help { get; } =
    [
        "A setup is a tuning and its clamps: standard + 2-4@2 holds strings 2 to 4 at fret 2. Strings are counted from the highest, 1; a set is 2-4, 1,3,5 or full. The last partial clamp is home, the one that shapes are counted from, unless another is marked with *.",
        "Up and Down go through common setups; or write your own, and read beneath what its open strings ring, what they spell and which tuning they resemble. F2 and F3 move a full capo beneath all of it, F4 turns the clamps round to the other side strings.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        List<Line> lines = [Line.Of("setup: ", Tone.Quiet).And(_text, Tone.Strong).And("_", Tone.Cursor), Line.Empty];
        if (!Setup.Parse(_text).TryGet(out Setup? setup, out Fault? fault))
        {
            lines.AddRange(Line.Wrap(fault.ToString(), width, Tone.Wrong));
            return lines;
        }

        lines.AddRange(FretboardDrawing.Draw(
            new FretboardPicture(setup, Fretting.AllRinging(setup.StringCount)) { Notes = [.. setup.GroundPitches.Select(pitch => pitch.ToString())] }, _desk.Glyphs, width));
        lines.Add(Line.Empty);
        lines.AddRange(SetupDescription.Of(setup).Lines.SelectMany(line => Line.Wrap(line, width)));
        if (lines.Count > height)
        {
            lines.RemoveAll(line => line.Width == 0);
        }

        return lines;
    }

    public override bool Press(Key key)
    {
        if (key == Key.Esc)
        {
            _shell.Close();
            return true;
        }

        if (key == Key.Enter)
        {
            if (Setup.Parse(_text).TryGet(out Setup? setup, out _))
            {
                _shell.Close();
                _choose(setup);
            }

            return true;
        }

        if (key == Key.CursorDown || key == Key.CursorUp)
        {
            _at = (_at + (key == Key.CursorDown ? 1 : s_common.Length - (_at < 0 ? 0 : 1))) % s_common.Length;
            _text = s_common[_at];
            return true;
        }

        return key == Key.F2 ? Change(setup => FullCapo.Move(setup, -1))
            : key == Key.F3 ? Change(setup => FullCapo.Move(setup, 1))
            : key == Key.F4 ? Change(setup => setup.Turned())
            : Type(key);
    }

    private bool Change(Func<Setup, Result<Setup>> change)
    {
        if (Setup.Parse(_text).Then(change).TryGet(out Setup? changed, out _))
        {
            _text = changed.ToString();
        }

        return true;
    }

    private bool Type(Key key)
    {
        int sign = key.AsRune.Value;
        if (key == Key.Backspace)
        {
            _text = _text.Length > 0 ? _text[..^1] : _text;
            return true;
        }

        bool isText = sign is >= ' ' and < 127 && !key.IsCtrl && !key.IsAlt && _text.Length < LongestText;
        _text += isText ? (char)sign : "";
        return isText;
    }
}
