using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Sound.TuneUp;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>In tune after the clamp went on: every string's target, reference tones, and the pairs that show whether it holds.</summary>
internal sealed class TunePage(Frame frame, ScreenDesk desk, Setup setup) : Page
{
    private readonly TuningPlan _plan = TuningPlan.Of(setup, desk.Settings.Style.ConcertPitch);
    private int _pair;

    public override string Title => "tune up";

    public override string Corner => $"{setup}   {desk.Settings.Style.ConcertPitch}";

    public override IReadOnlyList<PageKey> Keys =>
    [
        PageKey.Digits(1, setup.StringCount, "string", number => desk.Sound.Play(TuningTones.Reference(setup, StringNumber.Of(number), desk.Settings.Style.ConcertPitch))),
        .. _plan.Pairs.IsEmpty ? Array.Empty<PageKey>() :
        [
            PageKey.Steps(KeyPress.Up, KeyPress.Down, "pair", step => _pair = Math.Clamp(_pair + step, 0, _plan.Pairs.Length - 1)),
            PageKey.On(KeyPress.Enter, "hear", () => PlayPair(default)),
        ],
        PageKey.On('w', "which is out?", () => frame.Open(new DetunePage(frame, desk, setup))),
        .. _plan.Pairs.IsEmpty ? Array.Empty<PageKey>() : [PageKey.On('b', "beat", () => PlayPair(new Cents(10)))],
        PageKey.On(KeyPress.Esc, "back", frame.Close),
    ];

    public override IReadOnlyList<string> Help { get; } =
    [
        "A clamp pulls the strings that it holds sharp, the low ones most; a partial clamp parts the strings into pulled and free ones, and octaves between the two show it. Tune by unisons and octaves: they are pure in equal temperament, fifths are two cents narrow and major thirds fourteen wide. Take the retuning back when the clamp comes off.",
        "A number plays that string as it should sound from its ground. Enter plays the pair under the cursor in tune; b plays it with the upper string ten cents sharp, so that you know the beating that you listen for.",
        "w is an exercise: one string is out of tune as a clamp leaves it. Which one, and which way? The steps go from thirty cents down to three as you answer right.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        List<Line> lines =
        [
            Line.Of($"tune in this order: {string.Join(" ", _plan.Order)}", Tone.Strong),
            .. _plan.Targets.Reverse().Select(TargetLine),
            Line.Empty,
        ];
        if (_plan.Pairs.IsEmpty)
        {
            lines.AddRange(Line.Wrap("No two strings stand in unison or octaves here: tune each one to its reference.", width, Tone.Quiet));
            return lines;
        }

        int room = Math.Max(1, height - lines.Count - 4);
        int top = Math.Clamp(_pair - room + 1, 0, Math.Max(0, _plan.Pairs.Length - room));
        lines.AddRange(_plan.Pairs.Skip(top).Take(room).Select((pair, i) => PairLine(pair, top + i == _pair)));
        lines.Add(Line.Empty);
        lines.AddRange(Line.Wrap(_plan.Pairs[_pair].Advice, width, Tone.Quiet));
        return lines;
    }

    public override void Leave() => desk.Sound.Stop();

    private void PlayPair(Cents off) => desk.Sound.Play(TuningTones.Pair(setup, _plan.Pairs[_pair], off, desk.Settings.Style.ConcertPitch));

    private static Line TargetLine(StringTarget target) => Line.Of($" {target.String}  ", Tone.Key)
        .And($"{target.Spelled,-4}", Tone.Strong)
        .And($" {target.Hertz,7:0.00} Hz  ")
        .And(target.IsHeld ? "held: expect it sharp" : "free", target.IsHeld ? Tone.Held : Tone.Free);

    private static Line PairLine(TuningPair pair, bool isHere) =>
        Line.Of(isHere ? " > " : "   ", Tone.Key)
            .And($"strings {pair.Lower} and {pair.Upper}  ", isHere ? Tone.Cursor : Tone.Plain)
            .And(pair.Octaves switch { 0 => "unison", 1 => "octave", var many => $"{many} octaves" }, Tone.Quiet)
            .And(pair.CrossesClamp ? "  across the clamp" : "", Tone.Held);
}
