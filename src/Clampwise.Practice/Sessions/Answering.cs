using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Takes an answer: verdict, grade, attempt, memory; and its overruling and undoing.</summary>
internal static class Answering
{
    private const int MostAgain = 1;

    public static SessionStep Take(SessionState state, SessionEvent.Answered answered, SessionWorld world)
    {
        if (state is not { Phase: SessionPhase.Asking, Open: { Id: not null } open })
        {
            return SessionStep.Refused(state, SessionWords.NotNow);
        }

        AskContext context = Asking.ContextOf(state, answered.Stamp.Now, world);
        if (!QuestionMaker.Judge(open.Question, answered.Answer, context).TryGet(out Verdict? verdict, out Fault? fault))
        {
            return SessionStep.Refused(state, fault);
        }

        Attempt attempt = Attempts.Of(state, open, verdict, answered, world);
        SessionState judged = Count(state with { BeforeAnswer = state, Phase = SessionPhase.Judged }, open, verdict, attempt);
        return SessionStep.To(
            Clocks.Settle(judged, answered.Stamp.Now),
            new SessionEffect.Store(attempt),
            new SessionEffect.ShowVerdict(verdict, attempt.Grade));
    }

    public static SessionStep Overrule(SessionState state, SessionEvent.Regraded overruled)
    {
        if (state is not { Phase: SessionPhase.Judged, BeforeAnswer: { } before, Open: { } open, Outcomes: [.., var last] })
        {
            return SessionStep.Refused(state, SessionWords.NotNow);
        }

        var entry = new GradeOverruled(overruled.Stamp.Id, overruled.Stamp.Now.Utc, last.Attempt.Id, overruled.Grade);
        Attempt attempt = LogReading.Overruled(last.Attempt, overruled.Grade);
        SessionState counted = Count(
            state with { Memory = before.Memory, Queue = before.Queue, Outcomes = before.Outcomes }, open, last.Verdict, attempt);
        return SessionStep.To(counted, new SessionEffect.Store(entry), new SessionEffect.ShowGrade(overruled.Grade));
    }

    public static SessionStep Undo(SessionState state, Stamp stamp)
    {
        if (state is not { Phase: SessionPhase.Judged, BeforeAnswer: { Open: { } open } before, Outcomes: [.., var last] })
        {
            return SessionStep.Refused(state, SessionWords.NothingToUndo);
        }

        var entry = new AttemptWithdrawn(stamp.Id, stamp.Now.Utc, last.Attempt.Id);
        SessionState asking = before with
        {
            Clock = state.Clock,
            IsPaused = state.IsPaused,
            IsAway = state.IsAway,
            CanListen = state.CanListen,
            Open = open with { Id = null, Clock = default, Sound = TimeSpan.Zero },
        };
        return SessionStep.To(
            Clocks.Settle(asking, stamp.Now), new SessionEffect.Store(entry), new SessionEffect.Show(open.Question, open.Planned.Part));
    }

    private static SessionState Count(SessionState state, OpenQuestion open, Verdict? verdict, Attempt attempt)
    {
        double? before = state.Memory.Items.TryGetValue(attempt.Item, out ItemMemory? known) ? known.Memory.Stability : null;
        MemoryState memory = state.Memory.With(attempt);
        var outcome = new Outcome(open.Planned, attempt, verdict, before, memory.Items[attempt.Item].Memory.Stability);
        return state with
        {
            Memory = memory,
            Outcomes = state.Outcomes.Add(outcome),
            Queue = ComesAgain(state, open.Planned.Part, attempt) ? Asking.AskAgain(state.Queue, open.Planned.Item) : state.Queue,
        };
    }

    // In the daily drill what was missed comes once more; in the other kinds each question stands alone.
    private static bool ComesAgain(SessionState state, SessionPart part, Attempt attempt)
    {
        int before = state.Outcomes.Count(outcome => outcome.Attempt.Item == attempt.Item);
        bool isOpen = state.Kind == SessionKind.Daily && part != SessionPart.Close && !attempt.Item.Direction.IsInTime();
        return isOpen && before < MostAgain && !attempt.IsCorrect;
    }
}
