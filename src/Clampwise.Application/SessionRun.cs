using Clampwise.Practice;
using Clampwise.Sound;
using Step = Clampwise.Practice.Session;

namespace Clampwise.Application;

/// <summary>Steps a session and carries out its effects in their order: stores, plays, and tells a view what to show.</summary>
public sealed class SessionRun
{
    private readonly Desk _desk;
    private readonly ISessionView _view;
    private readonly SessionVoice _voice;

    /// <summary>A session that has not begun, or was put down; nothing happens before <see cref="Begin"/>.</summary>
    public SessionRun(Desk desk, SessionState session, ISessionView view) => (_desk, State, _view, _voice) = (desk, session, view, new SessionVoice(desk));

    /// <summary>Where it stands.</summary>
    public SessionState State { get; private set; }

    /// <summary>True if an answer could not be kept: the reason was said.</summary>
    public bool HasLost { get; private set; }

    /// <summary>Begins, or takes up again what was put down.</summary>
    public void Begin()
    {
        if (State.CanListen != _desk.Sound.IsAudible)
        {
            Happen(new SessionEvent.SoundChanged(_desk.Stamp(), _desk.Sound.IsAudible));
        }

        Happen(State.Phase == SessionPhase.Ready ? new SessionEvent.Begun(_desk.Stamp()) : new SessionEvent.TakenUp(_desk.Stamp()));
    }

    /// <summary>Takes one event.</summary>
    public void Happen(SessionEvent happened)
    {
        SessionStep step = Step.Step(State, happened, _desk.World);
        State = step.State;
        foreach (SessionEffect effect in step.Effects)
        {
            CarryOut(effect);
        }
    }

    /// <summary>Plays the question once more, so many times slower; false if there is nothing to hear.</summary>
    public bool PlayAgain(double slower) => Repeat(_voice.Again(State.Open!.Question, slower));

    /// <summary>Plays the question one string after another; false if there is nothing to hear.</summary>
    public bool PlayStrings() => Repeat(_voice.StringByString(State.Open!.Question));

    /// <summary>Plays all open strings, to set the ear; false if hearing is not asked.</summary>
    public bool PlayReference() => Repeat(_voice.Reference(State.Open!.Question));

    /// <summary>Plays the shape that the card shows, whole and string by string; false if it shows none or nothing can be heard.</summary>
    public bool PlayCard() => State.Card is { } card && Plays(_voice.Card(card));

    /// <summary>Plays the right voicing of a question that the player judges alone; false if nothing can be heard.</summary>
    public bool PlayShape() => Plays(_voice.Shape(State.Open!.Question.Subject));

    /// <summary>Plays what belongs to a verdict.</summary>
    public void PlayVerdict(Verdict verdict) => _desk.Sound.Play(_voice.Verdict(verdict));

    /// <summary>Plays only the strings that differ.</summary>
    public void PlayDifference(Verdict verdict) => _desk.Sound.Play(_voice.Difference(verdict));

    /// <summary>Hands what was learned back to the desk, and puts the session down there if it is not over.</summary>
    public void Leave()
    {
        _desk.Sound.Stop();
        _desk.Record.Learn(State.Memory);
        if (State.Phase != SessionPhase.Finished)
        {
            _desk.Sessions.Rest(Step.Step(State, new SessionEvent.Paused(_desk.Stamp()), _desk.World).State);
        }
    }

    private bool Plays(Performance? performance)
    {
        if (performance is not null)
        {
            _desk.Sound.Play(performance);
        }

        return performance is not null;
    }

    private bool Repeat(Performance? performance)
    {
        if (performance is null)
        {
            return false;
        }

        _desk.Sound.Play(performance);
        Happen(new SessionEvent.SoundRepeated(_desk.Stamp(), performance.End));
        return true;
    }

    private void CarryOut(SessionEffect effect)
    {
        switch (effect)
        {
            case SessionEffect.Show show:
                Show(show.Question);
                break;
            case SessionEffect.ShowCard shown:
                _view.ShowCard(shown.Card);
                _ = PlayCard();
                break;
            case SessionEffect.ShowHint shown:
                _view.ShowHint(shown.Hint);
                _ = shown.Hint.IsArpeggio && PlayStrings();
                break;
            case SessionEffect.Store store:
                Keep(store.Entry);
                break;
            case SessionEffect.ShowVerdict shown:
                _view.ShowVerdict(shown.Verdict, shown.Grade);
                // Who judged it alone has heard it already.
                if (shown.Verdict.OwnGrade is null)
                {
                    PlayVerdict(shown.Verdict);
                }

                break;
            case SessionEffect.ShowGrade shown:
                _view.ShowGrade(shown.Grade);
                break;
            case SessionEffect.Refuse refused:
                _view.Say(refused.Fault.ToString());
                break;
            case SessionEffect.Notice notice:
                _view.Say(notice.Words);
                break;
            case SessionEffect.Finish finish:
                _view.Finish(finish.Summary);
                break;
        }
    }

    private void Show(Question question)
    {
        _view.ShowQuestion(question);
        Performance? sound = _voice.Question(question);
        if (sound is not null)
        {
            _desk.Sound.Play(sound);
        }

        Happen(new SessionEvent.QuestionShown(_desk.Stamp(), sound?.End ?? TimeSpan.Zero));
    }

    private void Keep(LogEntry entry)
    {
        if (_desk.Record.Log.Append(entry) is { } fault)
        {
            HasLost = true;
            _view.Say(fault.ToString());
        }
    }
}
