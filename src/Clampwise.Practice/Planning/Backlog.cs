namespace Clampwise.Practice;

/// <summary>More is due than fits into a session: an end in sight instead of a reproach.</summary>
/// <param name="Due">How many items wait.</param>
/// <param name="Today">How many of them come today.</param>
/// <param name="Sessions">About how many sessions like today's bring all of them back, those counted in that fall due again meanwhile.</param>
public sealed record Backlog(int Due, int Today, int Sessions)
{
    /// <summary>What is said of it.</summary>
    public string Words => PlanningWords.Backlog(this);
}
