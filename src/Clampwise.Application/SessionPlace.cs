using Clampwise.Practice;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Application;

/// <summary>Where sessions begin, and where one that was put down lies until it is taken up again, also over the end of the program.</summary>
/// <param name="desk">The desk.</param>
public sealed class SessionPlace(Desk desk)
{
    private Fault? _unkept;

    /// <summary>A session that was put down and can be taken up again; null if there is none.</summary>
    public SessionState? Resting { get; private set; }

    /// <summary>The same if it has time and questions left, so that something would be lost by ending it.</summary>
    public SessionState? Waiting => Resting is { } session && HasMore(session) ? session : null;

    /// <summary>A planned session, ready to begin. One that waits is ended, with its answers kept: ask first (<see cref="Waiting"/>).</summary>
    public SessionState Start(SessionPlan plan)
    {
        _unkept = EndResting() ?? _unkept;
        return SessionState.Of(plan, new SessionId(desk.Circumstances.NewId()), desk.Record.Memory, desk.Circumstances.NewSeed(), desk.Sound.IsAudible);
    }

    /// <summary>Puts a session down, or with null clears the place.</summary>
    public void Rest(SessionState? session) => Resting = session;

    /// <summary>
    /// Keeps the session that was put down for the next start. One with no time or no question left is ended instead, so that its
    /// length stands in the log.
    /// </summary>
    /// <returns>Why it, or the end of one that another took the place of, could not be kept; null if all went well.</returns>
    public Fault? Close()
    {
        if (desk.Shelf.Folder is not { } folder)
        {
            return _unkept;
        }

        if (Waiting is { } session)
        {
            return SessionFile.Save(folder, SessionSnapshot.Of(session, desk.Now, desk.Calendar)) ?? _unkept;
        }

        SessionFile.Forget(folder);
        return EndResting() ?? _unkept;
    }

    /// <summary>Brings back the session that was kept, if it is of today and has something left: else a new plan serves better.</summary>
    public void TakeUpKept()
    {
        if (desk.Shelf.Folder is { } folder && SessionFile.Load(folder) is { } kept && kept.Day == desk.Today)
        {
            SessionState session = kept.Restore(desk.Shelf.Everything, desk.Record.Memory, LogReading.Attempts(desk.Record.Log.ReadAll()), desk.Sound.IsAudible);
            Resting = HasMore(session) ? session : null;
        }
    }

    private Fault? EndResting()
    {
        Fault? fault = null;
        if (Resting is { } over)
        {
            foreach (SessionEffect.Store store in Session.Step(over, new SessionEvent.CutShort(desk.Stamp()), desk.World).Effects.OfType<SessionEffect.Store>())
            {
                fault = desk.Record.Log.Append(store.Entry) ?? fault;
            }
        }

        Resting = null;
        return fault;
    }

    private bool HasMore(SessionState session) =>
        !(session.LeftAt(desk.Now) <= TimeSpan.Zero) && (session.Phase == SessionPhase.Asking || session.Queue.Length + session.Close.Length > 0);
}
