using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What must be kept of a session to take it up again after the program was left: plain values, easily written down.</summary>
/// <param name="Id">The session.</param>
/// <param name="Kind">What kind it is.</param>
/// <param name="Day">The practice day of the snapshot; on another day a new plan serves better.</param>
/// <param name="Length">How long it is to last; null if it ends with its questions.</param>
/// <param name="Practised">Time on its clock.</param>
/// <param name="Seed">Seed of all chance.</param>
/// <param name="Queue">Questions to come, an open one first.</param>
/// <param name="Close">Easy ones to end on.</param>
/// <param name="ClosersLeft">How many of them are still to be asked.</param>
/// <param name="Spacing">How far apart questions about one shape stand.</param>
/// <param name="Asked">Items asked, the latest last.</param>
/// <param name="Answered">Answers so far.</param>
public sealed record SessionSnapshot(
    SessionId Id,
    SessionKind Kind,
    PracticeDay Day,
    TimeSpan? Length,
    TimeSpan Practised,
    int Seed,
    ImmutableArray<SnapshotItem> Queue,
    ImmutableArray<SnapshotItem> Close,
    int ClosersLeft,
    int Spacing,
    ImmutableArray<ItemKey> Asked,
    ImmutableArray<SnapshotAnswer> Answered)
{
    /// <summary>What it is called if its kind does not say it; see <see cref="SessionPlan.Title"/>.</summary>
    public string? Title { get; init; }

    /// <summary>The session as it stands.</summary>
    public static SessionSnapshot Of(SessionState state, Moment now, PracticeCalendar calendar)
    {
        OpenQuestion? unanswered = state.Phase == SessionPhase.Asking ? state.Open : null;
        ImmutableArray<SnapshotItem> queue = [.. state.Queue.Select(SnapshotItem.Of)];
        return new SessionSnapshot(
            state.Id, state.Kind, calendar.DayOf(now.Utc), state.Length, state.Clock.At(now), state.Seed,
            unanswered is null ? queue : queue.Insert(0, SnapshotItem.Of(unanswered.Planned)),
            [.. state.Close.Select(SnapshotItem.Of)],
            state.ClosersLeft,
            state.Spacing,
            [.. unanswered is null ? state.Asked : state.Asked.RemoveAt(state.Asked.Count - 1)],
            [.. state.Outcomes.Select(SnapshotAnswer.Of)])
        {
            Title = state.Title,
        };
    }

    /// <summary>
    /// The session ready to begin again. Items that no drill has any more are left out, and so are answers that the log does not
    /// have.
    /// </summary>
    /// <param name="repertoire">What can be asked.</param>
    /// <param name="memory">What is known of the player now.</param>
    /// <param name="attempts">The attempts of the log; see <see cref="LogReading.Attempts"/>.</param>
    /// <param name="canListen">True if there is sound.</param>
    public SessionState Restore(Repertoire repertoire, MemoryState memory, IEnumerable<Attempt> attempts, bool canListen = true)
    {
        Dictionary<EntryId, Attempt> own = attempts.Where(attempt => attempt.Session == Id).ToDictionary(attempt => attempt.Id);
        return new SessionState(Id, Kind, Length, Seed, memory)
        {
            Title = Title,
            Queue = [.. Queue.Select(item => item.In(repertoire)).OfType<PlannedItem>()],
            Close = [.. Close.Select(item => item.In(repertoire)).OfType<PlannedItem>()],
            ClosersLeft = ClosersLeft,
            Spacing = Spacing,
            Asked = [.. Asked],
            Clock = new SessionClock(Practised, null),
            RestsOffered = (int)(Practised / Asking.RestEvery),
            CanListen = canListen,
            Outcomes = [.. Answered.Select(answer => answer.In(repertoire, own)).OfType<Outcome>()],
        };
    }
}
