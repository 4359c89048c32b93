namespace Clampwise.Practice;

/// <summary>Ends a session.</summary>
internal static class Finishing
{
    public static SessionStep Finish(SessionState state, Stamp stamp, SessionWorld world, bool wasCutShort)
    {
        PracticeDay day = world.Calendar.DayOf(stamp.Now.Utc);
        SessionState finished = state with { Phase = SessionPhase.Finished, Clock = state.Clock.Stopped(stamp.Now), BeforeAnswer = null };
        var entry = new SessionEnded(stamp.SecondId, stamp.Now.Utc, state.Id, state.Kind, day, finished.Clock.Gone, wasCutShort);
        var summary = new SessionSummary(state.Kind, finished.Clock.Gone, wasCutShort, state.Outcomes)
        {
            Title = state.Title,
            DueTomorrow = world.Repertoire.Items.Count(item =>
                state.Memory.Items.TryGetValue(item.Key, out ItemMemory? memory) && memory.DueOn(state.Memory.Model) <= day + 1),
        };
        return SessionStep.To(finished, new SessionEffect.Store(entry), new SessionEffect.Finish(summary));
    }
}
