namespace Clampwise.Practice;

/// <summary>How long was practised, session by session.</summary>
public static class PractisedTime
{
    // A longer gap between two answers was no practice (our judgement).
    private static readonly TimeSpan s_longestGap = TimeSpan.FromMinutes(2);

    /// <summary>
    /// Time practised on each day: from the ends of sessions, and for a session without an end, which was killed, from the gaps
    /// between its answers. A session counts for the day of its last answer or end.
    /// </summary>
    public static IReadOnlyDictionary<PracticeDay, TimeSpan> ByDay(IEnumerable<LogEntry> entries)
    {
        LogEntry[] all = [.. entries];
        // One that was taken up again has several ends, each with all its time.
        Dictionary<SessionId, SessionEnded> ends = all.OfType<SessionEnded>().GroupBy(end => end.Session)
            .ToDictionary(group => group.Key, group => group.MaxBy(end => end.Practised)!);
        IEnumerable<(PracticeDay Day, TimeSpan Time)> killed = all.OfType<Attempt>().Where(attempt => !ends.ContainsKey(attempt.Session))
            .GroupBy(attempt => attempt.Session)
            .Select(group => (group.Max(attempt => attempt.Day), FromGaps([.. group.OrderBy(attempt => attempt.At)])));
        return ends.Values.Select(end => (end.Day, Time: end.Practised)).Concat(killed)
            .GroupBy(pair => pair.Day)
            .ToDictionary(group => group.Key, group => group.Aggregate(TimeSpan.Zero, (sum, pair) => sum + pair.Time));
    }

    private static TimeSpan FromGaps(Attempt[] attempts)
    {
        TimeSpan sum = Limit(attempts[0].At - attempts[0].AskedAt);
        for (int i = 1; i < attempts.Length; i++)
        {
            sum += Limit(attempts[i].At - attempts[i - 1].At);
        }

        return sum;
    }

    private static TimeSpan Limit(TimeSpan gap) => gap < TimeSpan.Zero ? TimeSpan.Zero : gap > s_longestGap ? s_longestGap : gap;
}
