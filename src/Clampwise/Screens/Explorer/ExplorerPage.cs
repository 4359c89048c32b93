using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Sound;
using Clampwise.Sound.Performing;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>A fretboard to walk on: what the hand does, how it sounds, and both names at every step.</summary>
internal sealed class ExplorerPage(Frame frame, ScreenDesk desk, Setup setup) : Page
{
    private const int NameRows = 4;
    private const int WordRows = 4;
    private readonly BoardView _view = new(desk);
    private HandOnFretboard _hand = HandOnFretboard.Start(setup);
    private Voicing? _marked;
    private string? _notice;

    public override string Title => "explore";

    public override string Corner => _hand.Setup.ToString();

    public override IReadOnlyList<PageKey> Keys
    {
        get
        {
            (PageKey move, PageKey finger, PageKey mute, PageKey ring, PageKey clear) = _hand.Keys(hand => _hand = hand);
            return
            [
                finger with { Does = "fret" }, mute,
                PageKey.On('r', "hear", () => Play(voicing => Perform.Strum(voicing, StrumDirection.Down, desk.Settings.Style))),
                PageKey.On('f', "find", Find), PageKey.On('c', "clamp", () => frame.Open(new SetupPage(frame, desk, _hand.Setup, Clamp))),
                PageKey.On('m', "mark", Mark), _view.Keys(() => Picture), PageKey.On(KeyPress.Esc, "back", frame.Close), move, ring,
                new PageKey("+ -", "full capo", [KeyPress.Of('+'), KeyPress.Of('='), KeyPress.Of('-')], press => MoveCapo(press.Sign == '-' ? -1 : 1)),
                PageKey.On('t', "tune", () => frame.Open(new TunePage(frame, desk, _hand.Setup))), PageKey.On('k', "keep", Keep),
                PageKey.On('g', "string by string", () => Play(voicing => Perform.Arpeggio(voicing, ArpeggioPattern.Upward, desk.Settings.Style))),
                PageKey.On('s', "one string", () => Play(voicing => Perform.SingleString(voicing, _hand.Number, desk.Settings.Style))), clear,
            ];
        }
    }

    public override IReadOnlyList<string> Help { get; } =
    [
        "Walk on the fretboard and read both names of what you hold: the shape name, counted from the home clamp, and the sounding name at concert pitch.",
        $"Keys: {HandOnFretboard.KeyWords}.",
        "r strums what you hold, g plays it string by string, s plays the string under the cursor. f finds voicings by name and puts one under your hand; c changes the clamps; t tunes up in this setup. + puts the full capo one fret up, with the clamps and your hand, - one fret down: shape names stay, sounding names move. k keeps the voicing in a drill of your own. F9 hands setup and fretting to the terminal's clipboard, as a command line takes them; some terminals allow that only in their settings.",
        "The difficulty is the best fingering's, in points. One more finger is one point; stretches, barres and muted strings in between add to it. Two or three are easy.",
        "m marks what you hold: walk on, or find another voicing, and both stay in the picture, with what moved on each string. m again marks anew; m with nothing moved takes the mark off. Other clamps, or the full capo at another fret, take it off too.",
        "d turns through what stands on the dots, and before the nut where strings ring: nothing, finger numbers, degrees (R is the root), pitches. z comes closer, with fewer and longer frets, w shows a wider part of the neck; left alone, the picture takes the room there is. The settings say how fretboards lie and where frets are counted from.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        IReadOnlyList<Line> board = _view.Draw(Picture, width, height - NameRows - WordRows);
        Line[] said =
        [
            .. Held.TryGet(out Voicing? good, out Fault? fault) ? Names(good, desk.Settings.Hand, width) : Line.Wrap(fault.Message, width, Tone.Wrong),
            .. _notice is null ? [] : Line.Wrap(_notice, width, Tone.Wrong),
        ];
        int left = height - board.Count - said.Length;
        Line[] words = [.. said, .. Two?.Words(desk.Glyphs, width, left) ?? []];
        return [.. board, .. board.Count + words.Length < height ? new[] { Line.Empty } : [], .. words];
    }

    protected override void BeforeKey() => _notice = null;

    public override Voicing? Copied => Held.TryGet(out Voicing? held, out _) ? held : null;

    public override void Leave() => desk.Sound.Stop();

    /// <summary>What the hand holds at the start; every string rings unless it is given.</summary>
    public Fretting Holds
    {
        init => _hand = _hand with { Fretting = value };
    }

    private Result<Voicing> Held => Voicing.Create(_hand.Setup, _hand.Fretting, allowBehindClamp: true);

    // What is held beside what was marked; null without a mark, or while the clamps refuse what is held.
    private TwoVoicings? Two => _marked is { } marked && Held.TryGet(out Voicing? held, out _)
        ? new TwoVoicings(VoicingComparison.Of(held, marked), "now", "before")
        : null;

    private FretboardPicture Picture => (Two?.Picture ?? new FretboardPicture(_hand.Setup, _hand.Fretting)
    {
        Notes = Held.TryGet(out Voicing? held, out _) ? VoicingNotes.Of(held) : [],
    }) with
    { Cursor = (_hand.Number, _hand.Fret), MayCompare = true };

    private void Find() => frame.Open(new FindPage(frame, desk, _hand.Setup, found => _hand = _hand with { Fretting = found.Fretting }));

    private void Keep() => _notice = Held.TryGet(out Voicing? voicing, out Fault? fault) ? desk.Shelf.Keep(voicing) : fault.Message;

    private void Play(Func<Voicing, Performance> how)
    {
        if (Held.TryGet(out Voicing? voicing, out _))
        {
            desk.Sound.Play(how(voicing));
        }

        _notice = desk.Sound.IsAudible ? null : desk.Sound.Notice;
    }

    private void Mark()
    {
        if (Held.TryGet(out Voicing? held, out Fault? fault))
        {
            _marked = held.Equals(_marked) ? null : held;
        }

        _notice = fault?.Message;
    }

    private void Clamp(Setup chosen)
    {
        _hand = HandOnFretboard.Start(chosen);
        _notice = Unmark();
    }

    // A mark stays where it was on the neck and would be of another setup: it goes.
    private void MoveCapo(int frets)
    {
        Result<HandOnFretboard> moved = FullCapo.Move(_hand.Setup, _hand.Fretting, frets)
            .Select(moved => _hand with { Setup = moved.Setup, Fretting = moved.Fretting });
        if (moved.TryGet(out HandOnFretboard? hand, out Fault? fault))
        {
            _hand = hand;
        }

        _notice = fault?.Message ?? Unmark();
    }

    // Takes the mark off; says so if there was one.
    private string? Unmark()
    {
        bool wasMarked = _marked is not null;
        _marked = null;
        return wasMarked ? "The mark is off: it belonged to the setup before." : null;
    }

    private static IEnumerable<Line> Names(Voicing voicing, Hand hand, int width) =>
    [
        .. Named("shape name     ", voicing.ShapeName, voicing.Fretting.ToHomeText(voicing.Setup), width),
        .. Named("sounding name  ", voicing.SoundingName, $"{voicing.Fretting}", width),
        .. Fingering.Of(voicing, hand).TryGet(out Fingering? fingering, out Fault? fault)
            ? Labelled("fingers        ", $"{fingering}; difficulty {fingering.Difficulty:0.0}", width)
            : Labelled("no hand for it ", fault.Message, width),
    ];

    // The fretting goes beneath a name that leaves it no room.
    private static IEnumerable<Line> Named(string label, string name, string fretting, int width)
    {
        Line line = Line.Of(label, Tone.Quiet).And(name, Tone.Strong);
        Line whole = line.And($"   {fretting}", Tone.Quiet);
        return whole.Width <= width ? [whole] : [line, Line.Of(fretting, Tone.Quiet).Indent(label.Length)];
    }

    private static IEnumerable<Line> Labelled(string label, string words, int width) => Line.Wrap(words, width - label.Length, Tone.Quiet)
        .Select((line, i) => i == 0 ? Line.Of(label, Tone.Quiet).And(line) : line.Indent(label.Length));
}
