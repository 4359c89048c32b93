using Clampwise.Application;
using Clampwise.Look;
using Clampwise.Practice;

namespace Clampwise.Screens.Session;

/// <summary>
/// A session on the screen: shows what the session asks for, turns keys into its events, and carries out its effects in their order,
/// so that an answer is on the disk before its verdict shows.
/// </summary>
internal sealed partial class SessionPage : Page, ISessionView
{
    private const int HintRows = 3;
    private readonly Frame _frame;
    private readonly ScreenDesk _desk;
    private readonly SessionRun _run;
    private AnswerPad? _pad;
    private VerdictView? _verdict;
    private Moment? _firstKey;
    private string? _notice;
    private bool _isSkipping;
    private int _shownSeconds;

    /// <summary>A session to begin, or to take up again.</summary>
    public SessionPage(Frame frame, ScreenDesk desk, SessionState session)
    {
        _frame = frame;
        _desk = desk;
        _run = new SessionRun(desk, session, this);
        Restore(session);
    }

    private SessionState State => _run.State;

    /// <summary>The card that is shown; null while none is.</summary>
    public Card? Card => State.IsPaused ? null : State.Card;

    public override string Title => SessionInWords.Title(State.Kind, State.Title);

    public override string Corner => SessionText.Progress(State, _desk.Now);

    public override bool IsTyping => _pad is { IsTyping: true } && State.Phase == SessionPhase.Asking && !State.IsPaused && !_isSkipping;

    public override IReadOnlyList<string> Help { get; } = SessionText.Help;

    // Not while it is asked.
    public override Fretboard.Voicing? Copied => State.Phase == SessionPhase.Judged ? _verdict?.Verdict.RightVoicing : null;

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        if (State is { IsPaused: false, Card: { } card })
        {
            return Noticed(CardView.Draw(card, _desk, width, height), height);
        }

        if (State.IsPaused || State.Open is not { } open)
        {
            return SessionText.Paused(State, _desk.Now, width);
        }

        List<Line> lines = [.. SessionText.Head(open, width)];
        if (_verdict is { } verdict)
        {
            lines.AddRange(verdict.Draw(width, height - lines.Count));
        }
        else
        {
            List<Line> below = [.. _isSkipping ? SessionText.SkipReasons() : _pad!.Draw(width, RuledOut(open))];
            Line[] hints = [.. open.Question.Hints.Take(open.Hints).SelectMany(hint => Line.Wrap($"Hint: {hint.Words}", width, Tone.Free))];
            int room = height - lines.Count;
            // Where there is room, some is kept for hints and verdict, so that the fretboard stays as it is when they come.
            bool isRoomy = room >= VerdictView.RoomyRows;
            int words = below.Count + Math.Max(hints.Length, isRoomy ? HintRows : 0);
            int kept = Math.Max(words, isRoomy ? VerdictView.RoomyWordRows : 0);
            lines.AddRange([.. _desk.Draw(_pad!.Picture, width, room - kept), .. below, .. hints]);
        }

        return Noticed(lines, height);
    }

    private IReadOnlyList<Line> Noticed(IReadOnlyList<Line> lines, int height) => _notice is null ? lines : [.. lines.Take(height - 1), Line.Of(_notice, Tone.Wrong)];

    protected override void BeforeKey() => _notice = null;

    public override bool Tick()
    {
        int seconds = (int)State.Clock.At(_desk.Now).TotalSeconds;
        bool isNew = seconds != _shownSeconds;
        _shownSeconds = seconds;
        return isNew;
    }

    public override void Enter()
    {
        _desk.Sound.Changed += OnSoundChanged;
        _desk.Sessions.Rest(null);
        _run.Begin();
    }

    public override void Attend(bool isAttending) =>
        Happen(isAttending ? new SessionEvent.FocusGained(_desk.Stamp()) : new SessionEvent.FocusLost(_desk.Stamp()));

    public override void Leave()
    {
        _desk.Sound.Changed -= OnSoundChanged;
        _run.Leave();
    }

    public void ShowQuestion(Question question)
    {
        _pad = PadFor(question);
        _verdict = null;
        _firstKey = null;
    }

    // The card stands in the state; Draw shows it from there.
    public void ShowCard(Card card) => (_pad, _verdict, _firstKey) = (null, null, null);

    // Hints stand in the state of the open question; Draw shows them from there.
    public void ShowHint(Hint hint)
    {
    }

    public void ShowVerdict(Verdict verdict, Grade grade) => _verdict = new VerdictView(verdict, grade, State.Open!.Question, _desk);

    public void ShowGrade(Grade grade) => _verdict = _verdict!.With(grade);

    public void Say(string words) => _notice = words;

    public void Finish(SessionSummary summary) => _frame.Replace(new SummaryPage(_frame, _desk, summary));

    private void Answer(Answer answer)
    {
        Moment now = _desk.Now;
        TimeSpan entry = _firstKey is { } first ? now.Running - first.Running : TimeSpan.Zero;
        Happen(new SessionEvent.Answered(_desk.Stamp(), answer, entry));
    }

    private AnswerPad PadFor(Question question) => AnswerPad.For(question, _desk.Glyphs, () => _run.PlayShape());

    // What is asked stays; only where the answer is made changes, for this and for what comes.
    private void TurnGuitar()
    {
        _desk.Use(_desk.Settings with { HasGuitar = !_desk.Settings.HasGuitar });
        _pad = PadFor(State.Open!.Question with { Form = _desk.Settings.HasGuitar ? AnswerForm.Play : AnswerForm.Place });
        _firstKey = null;
    }

    private void OnSoundChanged(object? sender, EventArgs e) =>
        _frame.Post(() =>
        {
            Happen(new SessionEvent.SoundChanged(_desk.Stamp(), _desk.Sound.IsAudible));
            _notice ??= _desk.Sound.Notice;
        });

    private void Happen(SessionEvent happened) => _run.Happen(happened);

    private void Restore(SessionState session)
    {
        if (session.Open is not { } open)
        {
            return;
        }

        _pad = PadFor(open.Question);
        if (session is { Phase: SessionPhase.Judged, Outcomes: [.., { Verdict: { } verdict } last] })
        {
            _verdict = new VerdictView(verdict, last.Attempt.Grade, open.Question, _desk);
        }
    }

    private static HashSet<int> RuledOut(OpenQuestion open) => [.. open.Question.Hints.Take(open.Hints).SelectMany(hint => hint.RuledOut)];
}
