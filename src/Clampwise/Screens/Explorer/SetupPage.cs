using System.Collections.Immutable;
using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Terminal;
using Clampwise.Theory;

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

    private static readonly ImmutableArray<KeyPress> s_typed = [.. Enumerable.Range(' ', '~' - ' ' + 1).Select(sign => KeyPress.Of((char)sign))];

    private const int LongestText = 60;
    private const int WordRows = 8;
    private readonly Frame _frame;
    private readonly ScreenDesk _desk;
    private readonly Action<Setup> _choose;
    private string _text;
    private int _at = -1;
    private string? _refusal;
    private Setup _shown;

    public SetupPage(Frame frame, ScreenDesk desk, Setup now, Action<Setup> choose)
    {
        (_frame, _desk, _choose) = (frame, desk, choose);
        (_text, _shown) = (now.ToString(), now);
    }

    public override string Title => "clamps";

    public override bool IsTyping => true;

    public override IReadOnlyList<PageKey> Keys =>
    [
        PageKey.On(KeyPress.Enter, "use", Use),
        PageKey.Steps(KeyPress.Up, KeyPress.Down, "list", Next),
        PageKey.Steps(KeyPress.Left, KeyPress.Right, "fret", step => Change(setup => HomeClamp.Along(setup, step))),
        PageKey.Steps(KeyPress.PageUp, KeyPress.PageDown, "strings", step => Change(setup => HomeClamp.Across(setup, step))),
        PageKey.Steps(KeyPress.F(5), KeyPress.F(6), "narrower, wider", step => Change(step < 0 ? HomeClamp.Narrower : HomeClamp.Wider)),
        PageKey.Steps(KeyPress.F(2), KeyPress.F(3), "full capo", step => Change(setup => FullCapo.Move(setup, step))),
        PageKey.On(KeyPress.Esc, "back", _frame.Close),
        PageKey.On(KeyPress.F(4), "turn round", () => Change(setup => setup.Turned())),
        PageKey.On(KeyPress.F(7), "one more", () => Change(HomeClamp.Added)),
        PageKey.On(KeyPress.F(8), "one off", () => Change(HomeClamp.Removed)),
        PageKey.On(KeyPress.F(9), "home", () => Change(HomeClamp.Next)),
        new PageKey("Tab", "tuning", [KeyPress.Tab, KeyPress.Tab.WithShift], press => Change(setup => Retuned(setup, press == KeyPress.Tab ? 1 : -1))),
        new PageKey("letters", "write a setup", s_typed, press => Write(press.Sign)).InHelpAlone,
        PageKey.On(KeyPress.Backspace, "one sign back", () => Write('\b')).InHelpAlone,
    ];

    public override IReadOnlyList<string> Help { get; } =
    [
        "A setup is a tuning and its clamps: standard + 2-4@2 holds strings 2 to 4 at fret 2. Strings are counted from the highest, 1; a set is 2-4, 1,3,5 or full. The last partial clamp is home, the one that shapes are counted from, unless another is marked with *.",
        "Up and Down go through common setups; or write your own, and read beneath what its open strings ring, what they spell and which tuning they resemble. F2 and F3 move a full capo beneath all of it, F4 turns the clamps round to the other side strings.",
        "The home clamp can be set by hand: Left and Right slide it along the neck, PageUp and PageDown across the strings, F5 and F6 let it hold fewer or more. F7 puts one more clamp on, F8 takes the home clamp off, F9 makes the next clamp home, Tab goes to the next tuning.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        bool isGood = Setup.Parse(_text).TryGet(out Setup? setup, out Fault? fault);
        _shown = setup ?? _shown;
        List<Line> lines = [Line.Of("setup: ", Tone.Quiet).And(_text, Tone.Strong).And("_", Tone.Cursor), .. Line.Wrap(fault?.ToString() ?? _refusal ?? "", width, Tone.Wrong)];
        Line[] words = [Line.Empty, .. SetupDescription.Of(_shown).Lines.SelectMany(line => Line.Wrap(line, width))];
        var picture = new FretboardPicture(_shown, Fretting.AllRinging(_shown.StringCount)) { Notes = _shown.GroundNames };
        // While a setup is half written, the one before it stays, quietly.
        IEnumerable<Line> all = [.. _desk.Draw(picture, width, height - 2 - WordRows), .. words];
        lines.AddRange(isGood ? all : all.Select(line => line.In(Tone.Quiet)));
        if (lines.Count > height)
        {
            lines.RemoveAll(line => line.Width == 0);
        }

        return [.. lines.Take(height)];
    }

    private void Use()
    {
        if (Setup.Parse(_text).TryGet(out Setup? setup, out _))
        {
            _frame.Close();
            _choose(setup);
        }
    }

    private void Next(int step)
    {
        _at = (_at + (step > 0 ? 1 : s_common.Length - (_at < 0 ? 0 : 1))) % s_common.Length;
        _text = s_common[_at];
    }

    private void Change(Func<Setup, Result<Setup>> change)
    {
        _refusal = null;
        if (Setup.Parse(_text).Then(change).TryGet(out Setup? changed, out Fault? fault))
        {
            _text = changed.ToString();
        }
        else
        {
            _refusal = fault.Message;
        }
    }

    // The clamps stay where they are; a tuning of another number of strings is passed over.
    private static Result<Setup> Retuned(Setup setup, int by)
    {
        Tuning[] tunings = [.. NamedTunings.All.Select(named => named.Tuning).Where(tuning => tuning.StringCount == setup.StringCount).Distinct()];
        int at = Array.IndexOf(tunings, setup.Tuning);
        Tuning next = tunings[at < 0 ? 0 : (at + by + tunings.Length) % tunings.Length];
        return setup.Home is { } home ? Setup.Create(next, setup.Clamps, home) : Setup.CreateFromNut(next, setup.Clamps);
    }

    // Backspace takes the last sign away.
    private void Write(char sign)
    {
        _refusal = null;
        if (sign == '\b')
        {
            _text = _text.Length > 0 ? _text[..^1] : _text;
        }
        else if (_text.Length < LongestText)
        {
            _text += sign;
        }
    }
}
