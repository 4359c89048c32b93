using Clampwise.Application;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>
/// A session on the screen: shows what the session asks for, turns keys into its events, and carries out its effects in their order,
/// so that an answer is on the disk before its verdict shows.
/// </summary>
internal sealed class SessionPage : Page, ISessionView
{
    private const int HintRows = 3;
    private readonly Shell _shell;
    private readonly ScreenDesk _desk;
    private readonly SessionRun _run;
    private AnswerPad? _pad;
    private VerdictView? _verdict;
    private Moment? _firstKey;
    private string? _notice;
    private bool _isSkipping;
    private int _shownSeconds;

    /// <summary>A session to begin, or to take up again.</summary>
    public SessionPage(Shell shell, ScreenDesk desk, SessionState session)
    {
        _shell = shell;
        _desk = desk;
        _run = new SessionRun(desk, session, this);
        Restore(session);
    }

    private SessionState State => _run.State;

    public override string Title => SessionWords.Title(State.Kind, State.Title);

    public override string Corner => SessionText.Progress(State, _desk.Now);

    public override bool IsTyping => _pad is { IsTyping: true } && State.Phase == SessionPhase.Asking && !State.IsPaused && !_isSkipping;

    public override IReadOnlyList<string> Help { get; } = SessionText.Help;

    // Not while it is asked.
    public override Fretboard.Voicing? Copied => State.Phase == SessionPhase.Judged ? _verdict?.Verdict.Right : null;

    public override IReadOnlyList<(string Key, string Does)> Keys => State switch
    {
        { IsPaused: true } => SessionText.PausedKeys,
        { Phase: SessionPhase.Judged } => [.. _verdict!.Keys.Where(key => key.Key != "p"), ("Esc", "pause"), ("F9", "copy")],
        _ when _isSkipping => SessionText.SkipKeys,
        _ when IsTyping => [.. _pad!.Keys, .. SessionText.TypingKeys(State.Open!, _desk.Sound.IsAudible).ExceptBy(_pad.Keys.Select(own => own.Key), key => key.Key)],
        _ => [.. _pad?.Keys ?? [], .. SessionText.AskingKeys(State.Open, _desk.Sound.IsAudible)],
    };

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
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

        return _notice is null ? lines : [.. lines.Take(height - 1), Line.Of(_notice, Tone.Wrong)];
    }

    public override bool Press(KeyPress key)
    {
        _notice = null;
        if (State.IsPaused)
        {
            return PressPaused(key);
        }

        if (_isSkipping)
        {
            return PressSkip(key);
        }

        return State.Phase == SessionPhase.Judged ? PressJudged(key) : PressAsking(key);
    }

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
        _pad = AnswerPad.For(question, _desk.Glyphs);
        _verdict = null;
        _firstKey = null;
    }

    // Hints stand in the state of the open question; Draw shows them from there.
    public void ShowHint(Hint hint)
    {
    }

    public void ShowVerdict(Verdict verdict, Grade grade) => _verdict = new VerdictView(verdict, grade, State.Open!.Question, _desk);

    public void ShowGrade(Grade grade) => _verdict = _verdict!.With(grade);

    public void Say(string words) => _notice = words;

    public void Finish(SessionSummary summary) => _shell.Replace(new SummaryPage(_shell, _desk, summary));

    private bool PressAsking(KeyPress key)
    {
        PadStep step = _pad!.Press(key);
        if (step.IsUsed)
        {
            _firstKey ??= _desk.Now;
            if (step.Answer is { } answer)
            {
                Answer(answer);
            }

            return true;
        }

        return SessionKeys.Of(key, IsTyping) switch
        {
            SessionKey.Pause => Pause(),
            SessionKey.Hint => Happen(new SessionEvent.HintAsked(_desk.Stamp())),
            SessionKey.DoNotKnow => Answer(new Answer.NotKnown()),
            SessionKey.Skip => _isSkipping = true,
            SessionKey.Replay => Heard(_run.PlayAgain(1)),
            SessionKey.Slower => Heard(_run.PlayAgain(2)),
            SessionKey.StringByString => Heard(_run.PlayStrings()),
            SessionKey.Reference => Heard(_run.PlayReference()),
            _ => false,
        };
    }

    private bool PressJudged(KeyPress key)
    {
        if (key == KeyPress.Enter || key == KeyPress.Space)
        {
            return Happen(new SessionEvent.WentOn(_desk.Stamp()));
        }

        if (key == KeyPress.Esc || key.Sign is 'p' or 'P')
        {
            return Pause();
        }

        if (key == KeyPress.Up || key == KeyPress.Down)
        {
            return Regrade(key == KeyPress.Up ? 1 : -1);
        }

        return key.Sign switch
        {
            'u' or 'U' => Happen(new SessionEvent.AnswerUndone(_desk.Stamp())),
            'r' or 'R' => Play(_run.PlayVerdict),
            'd' or 'D' => Play(_run.PlayDifference),
            'y' or 'Y' => _verdict!.Turn(),
            'b' or 'B' => _verdict!.ShowBoth(),
            _ => false,
        };
    }

    // One step up or down; at either end nothing more is written.
    private bool Regrade(int step)
    {
        Grade grade = State.Outcomes[^1].Attempt.Grade;
        var stepped = (Grade)Math.Clamp((int)grade + step, (int)Grade.Missed, (int)Grade.Instant);
        return stepped == grade || Happen(new SessionEvent.Regraded(_desk.Stamp(), stepped));
    }

    private bool PressPaused(KeyPress key)
    {
        if (key == KeyPress.Enter || key == KeyPress.Space || key.Sign is 'p' or 'P')
        {
            return Happen(new SessionEvent.TakenUp(_desk.Stamp()));
        }

        if (key == KeyPress.Esc)
        {
            _shell.Close();
            return true;
        }

        return key.Sign is 'e' or 'E' && Happen(new SessionEvent.CutShort(_desk.Stamp()));
    }

    private bool PressSkip(KeyPress key)
    {
        _isSkipping = false;
        int number = key.Sign - '1';
        return number >= 0 && number < SessionWords.Reasons.Count
            ? Happen(new SessionEvent.Skipped(_desk.Stamp(), SessionWords.Reasons[number].Reason))
            : true;
    }

    private bool Pause() => Happen(new SessionEvent.Paused(_desk.Stamp()));

    private bool Answer(Answer answer)
    {
        Moment now = _desk.Now;
        TimeSpan entry = _firstKey is { } first ? now.Running - first.Running : TimeSpan.Zero;
        return Happen(new SessionEvent.Answered(_desk.Stamp(), answer, entry));
    }

    private bool Play(Action<Verdict> how)
    {
        if (_desk.Sound.IsAudible)
        {
            how(_verdict!.Verdict);
        }

        return Heard(_desk.Sound.IsAudible);
    }

    private bool Heard(bool isHeard)
    {
        _notice = isHeard ? _notice : SessionWords.NothingHeard(_desk.Sound.IsAudible);
        return true;
    }

    private void OnSoundChanged(object? sender, EventArgs e) =>
        _shell.Post(() =>
        {
            Happen(new SessionEvent.SoundChanged(_desk.Stamp(), _desk.Sound.IsAudible));
            _notice ??= _desk.Sound.Notice;
        });

    private bool Happen(SessionEvent happened)
    {
        _run.Happen(happened);
        return true;
    }

    private void Restore(SessionState session)
    {
        if (session.Open is not { } open)
        {
            return;
        }

        _pad = AnswerPad.For(open.Question, _desk.Glyphs);
        if (session is { Phase: SessionPhase.Judged, Outcomes: [.., { Verdict: { } verdict } last] })
        {
            _verdict = new VerdictView(verdict, last.Attempt.Grade, open.Question, _desk);
        }
    }

    private static HashSet<int> RuledOut(OpenQuestion open) => [.. open.Question.Hints.Take(open.Hints).SelectMany(hint => hint.RuledOut)];
}
