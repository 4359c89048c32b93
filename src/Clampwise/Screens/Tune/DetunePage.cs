using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Sound;
using Clampwise.Sound.TuneUp;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>One string is out of tune: which one, and which way?</summary>
internal sealed class DetunePage : Page
{
    private const int WordRows = 5;
    private readonly Frame _frame;
    private readonly ScreenDesk _desk;
    private readonly Setup _setup;
    private readonly Random _random;
    private DetuneLadder _ladder;
    private string? _notice;
    private DetuneQuestion _question;
    private StringNumber? _chosen;
    private DetuneVerdict? _verdict;
    private int _asked;
    private int _right;

    public DetunePage(Frame frame, ScreenDesk desk, Setup setup)
    {
        _frame = frame;
        _desk = desk;
        _setup = setup;
        _random = new Random(desk.Circumstances.NewSeed());
        // Where the player was left: the ladder is climbed again by what the log says.
        _ladder = LogReading.Tunings(desk.Record.Log.ReadAll())
            .Aggregate(DetuneLadder.Start, (ladder, heard) => ladder.After(new DetuneVerdict(heard.IsStringRight, heard.IsAllRight)));
        _question = Ask();
    }

    public override string Title => "which string is out?";

    public override string Corner => $"{_right} of {_asked} right   {_ladder.Step.Value:0} cents";

    // An answer to what was not heard would be a guess.
    public override IReadOnlyList<PageKey> Keys => !_desk.Sound.IsAudible ? [Back] : _verdict is null
        ?
        [
            PageKey.Digits(1, _setup.StringCount, "string", number => _chosen = StringNumber.Of(number)),
            PageKey.Steps(KeyPress.Up, KeyPress.Down, "sharp, flat", step => Judge(step < 0)),
            PageKey.On('r', "again", () => PlayQuestion(_question)),
            PageKey.On('t', "in tune", () => _desk.Sound.Play(InTune)),
            Back,
        ]
        :
        [
            PageKey.On(KeyPress.Enter, "next", () => _question = Ask()).Or(KeyPress.Space),
            PageKey.On('r', "out of tune", () => PlayQuestion(_question)),
            PageKey.On('t', "in tune", () => _desk.Sound.Play(InTune)),
            Back,
        ];

    public override IReadOnlyList<string> Help { get; } =
    [
        "All strings are heard one by one, then together. One of them is out by the number of cents at the top right. Press its number, then Up if it is sharp or Down if it is flat. After right answers in a row the step gets smaller; it starts at 30 cents and ends at 3, and the next time it is where you left it. About 10 cents are what musicians tell apart. Without sound the exercise is closed.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        if (!_desk.Sound.IsAudible)
        {
            return [.. Line.Wrap("This exercise is for the ear: without sound it is closed, and nothing is counted.", width, Tone.Strong), Line.Empty, .. Line.Wrap(_desk.Sound.Notice ?? "", width, Tone.Wrong)];
        }

        var picture = new FretboardPicture(_setup, Fretting.AllRinging(_setup.StringCount))
        {
            Marked = _verdict is not null ? StringSet.Of([_question.String]) : _chosen is { } chosen ? StringSet.Of([chosen]) : default,
        };
        return
        [
            .. Line.Wrap("One string is out of tune. Which one, and is it sharp or flat?", width, Tone.Strong),
            Line.Empty,
            .. _desk.Draw(picture, width, height - WordRows),
            Line.Empty,
            .. Line.Wrap(Said, width, _verdict is { IsAllRight: false } ? Tone.Wrong : Tone.Right),
            .. _notice is { } notice ? Line.Wrap(notice, width, Tone.Wrong) : [],
        ];
    }

    public override void Enter() => _desk.Sound.Changed += OnSoundChanged;

    public override void Leave()
    {
        _desk.Sound.Changed -= OnSoundChanged;
        _desk.Sound.Stop();
    }

    private void OnSoundChanged(object? sender, EventArgs e) => _frame.Post(() => { });

    private string Said => _verdict switch
    {
        null => _chosen is { } chosen ? $"String {chosen}: Up if it is sharp, Down if it is flat." : "",
        { IsAllRight: true } => $"Right: string {_question.String} is {Words}.",
        { IsStringRight: true } => $"The right string, the other way: string {_question.String} is {Words}.",
        _ => $"It is string {_question.String}, {Words}.",
    };

    private string Words => $"{Math.Abs(_question.Detune.Value):0} cents {(_question.IsSharp ? "sharp" : "flat")}";

    private PageKey Back => PageKey.On(KeyPress.Esc, "back", _frame.Close);

    // Which way means nothing before there is a string.
    private void Judge(bool isSharp)
    {
        if (_chosen is not { } chosen)
        {
            return;
        }

        _verdict = _question.Judge(chosen, isSharp);
        Stamp stamp = _desk.Stamp();
        _notice = _desk.Record.Log.Append(new TuningHeard(
            stamp.Id, stamp.Now.Utc, _setup.ToString(), _question.String, _question.Detune.Value, _verdict.IsStringRight, _verdict.IsAllRight)) is { } fault
            ? $"Not kept: {fault}"
            : null;
        _ladder = _ladder.After(_verdict);
        _asked++;
        _right += _verdict.IsAllRight ? 1 : 0;
    }

    private DetuneQuestion Ask()
    {
        (_chosen, _verdict) = (null, null);
        var question = DetuneQuestion.Ask(_setup, _ladder, _random);
        PlayQuestion(question);
        return question;
    }

    private Performance InTune => TuningTones.OneByOne(_setup, _desk.Settings.Style.ConcertPitch);

    private void PlayQuestion(DetuneQuestion question) => _desk.Sound.Play(InTune.Detuned(question.String, question.Detune));
}
