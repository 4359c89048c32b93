using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Sound;
using Terminal.Gui.Input;
using Step = Clampwise.Practice.Session;

namespace Clampwise.Screens.Session;

/// <summary>
/// A session on the screen: shows what the session asks for, turns keys into its events, and carries out its effects in their order,
/// so that an answer is on the disk before its verdict shows.
/// </summary>
internal sealed class SessionPage : Page
{
    private readonly Shell _shell;
    private readonly Desk _desk;
    private readonly SessionVoice _voice;
    private SessionState _state;
    private AnswerPad? _pad;
    private VerdictView? _verdict;
    private Moment? _firstKey;
    private string? _notice;
    private bool _isSkipping;
    private int _shownSeconds;

    /// <summary>Begins a session, or takes one up again.</summary>
    public SessionPage(Shell shell, Desk desk, SessionState session)
    {
        _shell = shell;
        _desk = desk;
        _state = session;
        _voice = new SessionVoice(desk);
        _desk.Sound.Changed += OnSoundChanged;
        _desk.Rest(null);
        if (session.Phase == SessionPhase.Ready)
        {
            Happen(new SessionEvent.Begun(_desk.Stamp()));
        }
        else
        {
            Restore(session);
            Happen(new SessionEvent.TakenUp(_desk.Stamp()));
        }
    }

    public override string Title => SessionText.Title(_state.Kind);

    public override string Corner => SessionText.Progress(_state, _desk.Now);

    public override bool IsTyping => _pad is { IsTyping: true } && _state.Phase == SessionPhase.Asking && !_state.IsPaused && !_isSkipping;

    public override IReadOnlyList<string> Help { get; } = SessionText.Help;

    public override IReadOnlyList<(string Key, string Does)> Keys => _state switch
    {
        { IsPaused: true } => SessionText.PausedKeys,
        { Phase: SessionPhase.Judged } => _verdict!.Keys,
        _ when _isSkipping => SessionText.SkipKeys,
        _ when IsTyping => [.. _pad!.Keys, .. SessionText.TypingKeys],
        _ => [.. _pad?.Keys ?? [], .. SessionText.AskingKeys(_state.Open?.Question)],
    };

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        if (_state.IsPaused || _state.Open is not { } open)
        {
            return SessionText.Paused(_state, _desk.Now);
        }

        List<Line> lines = [.. SessionText.Head(open, width)];
        if (_verdict is { } verdict)
        {
            lines.AddRange(verdict.Draw(width, height - lines.Count));
        }
        else
        {
            List<Line> below = [.. _isSkipping ? SessionText.SkipReasons() : _pad!.Draw(width, RuledOut(open))];
            lines.AddRange(_desk.Draw(_pad!.Picture, width, height - lines.Count - below.Count));
            lines.AddRange(below);
            lines.AddRange(open.Question.Hints.Take(open.Hints).SelectMany(hint => Line.Wrap($"Hint: {hint.Words}", width, Tone.Free)));
        }

        return _notice is null ? lines : [.. lines.Take(height - 1), Line.Of(_notice, Tone.Wrong)];
    }

    public override bool Press(Key key)
    {
        _notice = null;
        if (_state.IsPaused)
        {
            return PressPaused(key);
        }

        if (_isSkipping)
        {
            return PressSkip(key);
        }

        return _state.Phase == SessionPhase.Judged ? PressJudged(key) : PressAsking(key);
    }

    public override bool Tick()
    {
        int seconds = (int)_state.Clock.At(_desk.Now).TotalSeconds;
        bool isNew = seconds != _shownSeconds;
        _shownSeconds = seconds;
        return isNew;
    }

    public override void Attend(bool isAttending) =>
        Happen(isAttending ? new SessionEvent.FocusGained(_desk.Stamp()) : new SessionEvent.FocusLost(_desk.Stamp()));

    public override void Leave()
    {
        _desk.Sound.Changed -= OnSoundChanged;
        _desk.Sound.Stop();
        _desk.Learn(_state.Memory);
        if (_state.Phase != SessionPhase.Finished)
        {
            _desk.Rest(Step.Step(_state, new SessionEvent.Paused(_desk.Stamp()), _desk.World).State);
        }
    }

    private bool PressAsking(Key key)
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
            SessionKey.Replay => PlayAgain(_voice.Again(_state.Open!.Question, 1)),
            SessionKey.Slower => PlayAgain(_voice.Again(_state.Open!.Question, 2)),
            SessionKey.StringByString => PlayAgain(_voice.StringByString(_state.Open!.Question)),
            SessionKey.Reference => PlayAgain(_voice.Reference(_state.Open!.Question)),
            _ => false,
        };
    }

    private bool PressJudged(Key key)
    {
        if (key == Key.Enter || key == Key.Space)
        {
            return Happen(new SessionEvent.WentOn(_desk.Stamp()));
        }

        if (key == Key.Esc || key.AsRune.Value is 'p' or 'P')
        {
            return Pause();
        }

        int number = key.AsRune.Value - '0';
        if (number is >= (int)Grade.Missed and <= (int)Grade.Instant)
        {
            return Happen(new SessionEvent.GradeOverruled(_desk.Stamp(), (Grade)number));
        }

        return key.AsRune.Value switch
        {
            'u' or 'U' => Happen(new SessionEvent.AnswerUndone(_desk.Stamp())),
            'r' or 'R' => Play(_voice.Verdict(_verdict!.Verdict)),
            'd' or 'D' => Play(_voice.Difference(_verdict!.Verdict)),
            'y' or 'Y' => _verdict!.Turn(),
            _ => false,
        };
    }

    private bool PressPaused(Key key)
    {
        if (key == Key.Enter || key == Key.Space || key.AsRune.Value is 'p' or 'P')
        {
            return Happen(new SessionEvent.TakenUp(_desk.Stamp()));
        }

        if (key == Key.Esc)
        {
            _shell.Close();
            return true;
        }

        return key.AsRune.Value is 'e' or 'E' && Happen(new SessionEvent.CutShort(_desk.Stamp()));
    }

    private bool PressSkip(Key key)
    {
        _isSkipping = false;
        int number = key.AsRune.Value - '1';
        return number >= 0 && number < SessionText.Reasons.Count
            ? Happen(new SessionEvent.Skipped(_desk.Stamp(), SessionText.Reasons[number].Reason))
            : true;
    }

    private bool Pause() => Happen(new SessionEvent.Paused(_desk.Stamp()));

    private bool Answer(Answer answer)
    {
        Moment now = _desk.Now;
        TimeSpan entry = _firstKey is { } first ? now.Running - first.Running : TimeSpan.Zero;
        return Happen(new SessionEvent.Answered(_desk.Stamp(), answer, entry));
    }

    private bool PlayAgain(Performance? performance)
    {
        if (performance is null)
        {
            return false;
        }

        Play(performance);
        return Happen(new SessionEvent.SoundRepeated(_desk.Stamp(), performance.End));
    }

    private bool Play(Performance performance)
    {
        _desk.Sound.Play(performance);
        return true;
    }

    private void OnSoundChanged(object? sender, EventArgs e) =>
        _shell.Post(() => Happen(new SessionEvent.SoundChanged(_desk.Stamp(), _desk.Sound.IsAudible)));

    private bool Happen(SessionEvent happened)
    {
        SessionStep step = Step.Step(_state, happened, _desk.World);
        _state = step.State;
        foreach (SessionEffect effect in step.Effects)
        {
            CarryOut(effect);
        }

        return true;
    }

    private void CarryOut(SessionEffect effect)
    {
        switch (effect)
        {
            case SessionEffect.Show show:
                ShowQuestion(show.Question);
                break;
            case SessionEffect.ShowHint { Hint.IsArpeggio: true }:
                PlayAgain(_voice.StringByString(_state.Open!.Question));
                break;
            case SessionEffect.Store store:
                _notice = _desk.Log.Append(store.Entry)?.ToString() ?? _notice;
                break;
            case SessionEffect.ShowVerdict shown:
                _verdict = new VerdictView(shown.Verdict, shown.Grade, _state.Open!.Question, _desk);
                Play(_voice.Verdict(shown.Verdict));
                break;
            case SessionEffect.ShowGrade shown:
                _verdict = _verdict!.With(shown.Grade);
                break;
            case SessionEffect.Refuse refused:
                _notice = refused.Fault.Message;
                break;
            case SessionEffect.Notice notice:
                _notice = notice.Words;
                break;
            case SessionEffect.Finish finish:
                _shell.Replace(new SummaryPage(_shell, _desk, finish.Summary));
                break;
        }
    }

    private void ShowQuestion(Question question)
    {
        _pad = AnswerPad.For(question);
        _verdict = null;
        _firstKey = null;
        Performance? sound = _voice.Question(question);
        if (sound is not null)
        {
            Play(sound);
        }

        Happen(new SessionEvent.QuestionShown(_desk.Stamp(), sound?.End ?? TimeSpan.Zero));
    }

    private void Restore(SessionState session)
    {
        if (session.Open is not { } open)
        {
            return;
        }

        _pad = AnswerPad.For(open.Question);
        if (session is { Phase: SessionPhase.Judged, Outcomes: [.., { Verdict: { } verdict } last] })
        {
            _verdict = new VerdictView(verdict, last.Attempt.Grade, open.Question, _desk);
        }
    }

    private static HashSet<int> RuledOut(OpenQuestion open) => [.. open.Question.Hints.Take(open.Hints).SelectMany(hint => hint.RuledOut)];
}
