using System.Collections.Immutable;
using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Screens.Session;
using Clampwise.Sound.Performing;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>Voicings of a setup by their name, best first, each with what speaks for it; the chosen one goes under the hand.</summary>
internal sealed class FindPage : Page
{
    private const int ListRows = 10;

    private readonly Frame _frame;
    private readonly ScreenDesk _desk;
    private readonly Finder _finder;
    private readonly Action<Voicing> _choose;
    private Entry _entry = Entry.Empty;
    private bool _isShapeName = true;
    private ImmutableArray<FoundHand> _found = [];
    private string _said = "Type a chord name, then Enter.";
    private int _at;

    public FindPage(Frame frame, ScreenDesk desk, Setup setup, Action<Voicing> choose)
    {
        (_frame, _desk, _choose) = (frame, desk, choose);
        _finder = new Finder(setup, desk.Settings.Hand);
    }

    public override string Title => "find";

    public override string Corner => _finder.Setup.ToString();

    public override bool IsTyping => _found.IsEmpty;

    public override IReadOnlyList<PageKey> Keys => _found.IsEmpty
        ?
        [
            PageKey.On(KeyPress.Enter, "find", Find), .. _entry.Keys(entry => _entry = entry),
            PageKey.On(KeyPress.F(2), _isShapeName ? "by sounding name" : "by shape name", () => _isShapeName = !_isShapeName),
            PageKey.On(KeyPress.Esc, "back", _frame.Close),
        ]
        :
        [
            PageKey.Steps(KeyPress.Up, KeyPress.Down, "choose", step => _at = Math.Clamp(_at + step, 0, _found.Length - 1)),
            PageKey.On(KeyPress.Enter, "take it", Take), PageKey.On('r', "hear", Play), PageKey.On(KeyPress.Esc, "new name", () => _found = []),
        ];

    public override IReadOnlyList<string> Help { get; } =
    [
        "Every voicing of the setup up to fret 14 that your hand can finger and that has at least four strings is looked at; the best come first: easy and full ones, low on the neck, grips that you know. A line is a whole hand: the words beside it say what weighs most, for it or against it; beneath the list stands all that is said of the one under the cursor, which strings may be left out, and what else its line stands for. F2 turns between the shape name, counted from the home clamp, and the sounding name.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        List<Line> lines =
        [
            Line.Of(_isShapeName ? "shape name: " : "sounding name: ", Tone.Quiet).And(_entry.Text, Tone.Strong).And(_found.IsEmpty ? "_" : "", Tone.Cursor),
            .. Line.Wrap(_said, width, Tone.Quiet),
        ];
        if (_found.IsEmpty)
        {
            lines.AddRange(Line.Wrap(string.Join("  ", _entry.Completions.Where(name => name != _entry.Text).Take(8)), width, Tone.Quiet));
            return lines;
        }

        Voicing here = _found[_at].Whole.Voicing;
        lines.AddRange(_desk.DrawTelling(new FretboardPicture(_finder.Setup, here.Fretting) { Notes = VoicingNotes.Of(here) }, width, height - lines.Count - ListRows));
        int gap = height - lines.Count >= ListRows ? 1 : 0;
        Line[] whole = [.. Enumerable.Repeat(Line.Empty, gap), .. Line.Wrap(_found[_at].Telling, width)];
        int room = Math.Max(1, height - lines.Count - gap - _found.Max(found => Line.Wrap(found.Telling, width).Count()));
        int top = Math.Clamp(_at - (room / 2), 0, Math.Max(0, _found.Length - room));
        lines.AddRange(_found.Skip(top).Take(room).Select((found, i) => FoundLine(found, top + i == _at, width)));
        return [.. lines, .. whole];
    }

    private void Take()
    {
        _choose(_found[_at].Whole.Voicing);
        _frame.Close();
    }

    private void Play() => _desk.Sound.Play(Perform.Strum(_found[_at].Whole.Voicing, StrumDirection.Down, _desk.Settings.Style));

    private void Find()
    {
        Result<FoundHands> result = TypedChord.Parse(_entry.Text.Trim()).Then(symbol => _finder.FindHands(Exploring.Usual with
        {
            ShapeName = _isShapeName ? symbol : null,
            SoundingName = _isShapeName ? null : symbol,
        }));
        if (!result.TryGet(out FoundHands? found, out Fault? fault))
        {
            _said = fault.ToString();
            return;
        }

        (_found, _at) = (found.Hands, 0);
        _said = found.Total == 0 ? $"no voicing of {_entry.Text} with at least {Exploring.Usual.MinStrings} strings that a hand can finger" : $"{Counted.Of(found.Total, "voicing")}, the best first";
    }

    private static Line FoundLine(FoundHand found, bool isHere, int width)
    {
        Line line = Line.Of(isHere ? " > " : "   ", Tone.Key).And($"{found.Whole.Voicing.Fretting.ToHomeText(found.Whole.Voicing.Setup),-20}", isHere ? Tone.Cursor : Tone.Plain).And(" ");
        return line.And(found.Whole.SummaryWithin(width - line.Width), Tone.Quiet);
    }
}
