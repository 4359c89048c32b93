using System.Collections.Immutable;
using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens.Session;
using Clampwise.Settings;
using Clampwise.Sound.Performing;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>The first minute: pick a clamp that you own, hear it, answer three questions; then the cautions, once. Esc skips to them.</summary>
internal sealed class WelcomePage(Frame frame, ScreenDesk desk, SettingsKeeper settings) : Page
{
    // The clamps that are sold (common practice, no source); the drills of the program start with one over three strings.
    private static readonly ImmutableArray<(OwnClamps Own, string Words)> s_clamps =
    [
        (OwnClamps.Of(3), "three strings"),
        (OwnClamps.Of(4), "four strings"),
        (OwnClamps.Of(5), "five strings, or a full capo off string 6"),
        (OwnClamps.Any, "I have several, or another: show me everything"),
    ];

    private const int BoardRows = 10;
    private int _at;
    private Step _step;
    private bool _hasAsked;
    private Fault? _unkept;

    private enum Step
    {
        Pick,
        Hear,
        Cautions,
    }

    public override string Title => "welcome";

    public override string Corner => _step switch
    {
        Step.Pick => "1 of 4",
        Step.Hear => "2 of 4",
        _ => "4 of 4",
    };

    public override IReadOnlyList<PageKey> Keys => _step switch
    {
        Step.Pick =>
        [
            PageKey.On(KeyPress.Enter, "this one", Pick).Or(KeyPress.Space),
            PageKey.Steps(KeyPress.Up, KeyPress.Down, "choose", step => _at = Math.Clamp(_at + step, 0, s_clamps.Length - 1)),
            PageKey.On('r', "hear it", Play),
            PageKey.On(KeyPress.Esc, "skip", () => _step = Step.Cautions),
            PageKey.Digits(1, s_clamps.Length, "choose", number => _at = number - 1).InHelpAlone,
        ],
        Step.Hear =>
        [
            PageKey.On(KeyPress.Enter, "three questions", Question).Or(KeyPress.Space),
            PageKey.On('r', "again", Play),
            PageKey.On(KeyPress.Esc, "skip the rest", () => _step = Step.Cautions),
        ],
        _ =>
        [
            PageKey.On(KeyPress.Enter, "go on", GoOn).Or(KeyPress.Space),
            PageKey.On(KeyPress.Esc, "first screen", GoOn),
        ],
    };

    public override IReadOnlyList<string> Help { get; } =
    [
        "The welcome is shown once. It asks for a clamp that you own, so that no drill wants another one; the settings hold it under 'Your partial clamps', and bring the welcome back under 'Welcome at the next start'.",
        "Up and Down, or a number, choose; r plays the six strings without the clamp and then with it; Enter goes on; Esc skips.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height) => _step switch
    {
        Step.Pick => Picking(width, height),
        Step.Hear => Hear(width, height),
        _ => Caution(width, height),
    };

    // In front again: the three questions are over or were put down.
    public override void Attend(bool isAttending) => _step = isAttending && _step == Step.Hear && _hasAsked ? Step.Cautions : _step;

    private Drill Drill => desk.Shelf.Drills.FirstOrDefault(drill => s_clamps[_at].Own.Fit(drill.Setup)) ?? desk.Shelf.Drills[0];

    private List<Line> Picking(int width, int height)
    {
        List<Line> lines =
        [
            .. Line.Wrap("A partial clamp holds down some strings and leaves the others free: new open strings, and the hand stays where it is.", width),
            Line.Empty,
            Line.Of("How many strings does your clamp hold?", Tone.Strong),
            .. s_clamps.Select((clamp, index) => Line.Of(index == _at ? " > " : "   ", Tone.Key)
                .And($"{index + 1}  ", Tone.Key).And(clamp.Words, index == _at ? Tone.Cursor : Tone.Plain)),
            Line.Empty,
            Line.Of("It goes here first: ", Tone.Quiet).And($"{Drill.Setup}", Tone.Held),
        ];
        return [.. lines, .. Board(width, height - lines.Count)];
    }

    private List<Line> Hear(int width, int height)
    {
        Setup setup = Drill.Setup;
        List<Line> lines =
        [
            Line.Of("Without it  ", Tone.Quiet).And(Pitches(Without(setup)), Tone.Free),
            Line.Of("with it     ", Tone.Quiet).And(Pitches(setup), Tone.Held),
            .. Line.Wrap(SetupDescription.Of(setup).Lines.First(), width, Tone.Quiet),
            Line.Empty,
            .. Line.Wrap("Every voicing has two names. The shape name counts from the clamp, as if it were the nut across all strings; the sounding name is what the room hears, at concert pitch.", width),
            .. desk.Sound.IsAudible ? [] : Line.Wrap($"{desk.Sound.Notice}; no questions for the ear meanwhile", width, Tone.Wrong),
            Line.Empty,
        ];
        return [.. lines, .. Board(width, height - lines.Count)];
    }

    private List<Line> Caution(int width, int height)
    {
        List<Line> lines =
        [
            Line.Of("Before you practise, once:", Tone.Strong),
            Line.Empty,
            .. Cautions.All.SelectMany(caution => Line.Wrap(caution, width).Append(Line.Empty)),
            .. _unkept is { } unkept ? Line.Wrap($"Not kept: {unkept.Message}", width, Tone.Wrong) : [],
            .. Line.Wrap("They stand in the help of every screen, under ? or F1.", width, Tone.Quiet),
        ];
        if (lines.Count > height)
        {
            lines.RemoveAll(line => line.Width == 0);
        }

        return lines;
    }

    private IEnumerable<Line> Board(int width, int height) => height < BoardRows - 2
        ? []
        : desk.Draw(new FretboardPicture(Drill.Setup, Fretting.AllRinging(Drill.Setup.StringCount)), width, height);

    private void Pick()
    {
        Set("guitar.clamps", settings.Now with { Clamps = s_clamps[_at].Own });
        _step = Step.Hear;
        Play();
    }

    private void Question()
    {
        _hasAsked = true;
        frame.Open(WaitingPage.ToStart(frame, desk, FirstQuestions.Plan(Drill, desk.Sound.IsAudible)));
    }

    private void GoOn()
    {
        Fault? said = _unkept;
        Set("screen.welcome", settings.Now with { ShowsWelcome = false });
        // What could not be kept is said before the welcome goes.
        if (said == _unkept)
        {
            frame.Close();
        }
    }

    private void Set(string key, PlayerSettings changed) => _unkept = settings.Change(SettingList.Find(key)!, changed) ?? _unkept;

    private void Play()
    {
        if (desk.Sound.IsAudible)
        {
            desk.Sound.Play(Perform.InTurn(Open(Without(Drill.Setup)), Open(Drill.Setup), desk.Settings.Style));
        }
    }

    private static Setup Without(Setup setup) => Setup.Create(setup.Tuning, setup.Clamps.Where(clamp => clamp.IsFull)).Value;

    private static Voicing Open(Setup setup) => Voicing.Create(setup, Fretting.AllRinging(setup.StringCount)).Value;

    private static string Pitches(Setup setup) => string.Join(" ", setup.GroundNames.Select(name => $"{name,-3}"));
}
