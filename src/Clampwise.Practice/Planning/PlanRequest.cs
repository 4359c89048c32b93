using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What a session is planned from.</summary>
/// <param name="Repertoire">What can be asked.</param>
/// <param name="Memory">What is known of the player.</param>
/// <param name="Today">The practice day.</param>
/// <param name="Seed">Seed of all chance in the session.</param>
public sealed record PlanRequest(Repertoire Repertoire, MemoryState Memory, PracticeDay Today, int Seed)
{
    /// <summary>Fifteen minutes.</summary>
    public static TimeSpan UsualLength { get; } = TimeSpan.FromMinutes(15);

    /// <summary>Two moves, so three setups: nobody moves a clamp more often in a quarter of an hour.</summary>
    public const int UsualMoves = 2;

    /// <summary>How long the session is to last.</summary>
    public TimeSpan Length { get; init; } = UsualLength;

    /// <summary>The directions wished. Changes in time are left out unless asked for: they take the instrument and a minute each.</summary>
    public ImmutableHashSet<Direction> Directions { get; init; } = [.. Practice.Directions.All.Where(direction => !direction.IsInTime())];

    /// <summary>How often the clamps may move in a session; null if setups may mix, as when no guitar is in hand.</summary>
    public int? MostMoves { get; init; } = UsualMoves;

    /// <summary>How many setups a session may have; null if they may mix.</summary>
    public int? MostSetups => MostMoves + 1;

    /// <summary>True if there is sound; without, everything that is heard is left out.</summary>
    public bool CanListen { get; init; } = true;

    /// <summary>True to fill the whole time with what is not due yet, for who chose a drill; else the day has an end.</summary>
    public bool FillsTime { get; init; }

    /// <summary>Why nothing is asked.</summary>
    internal string WhyEmpty => Items.Any() ? PlanningWords.AllAskedToday
        : Repertoire.Items.IsEmpty ? PlanningWords.NothingAsked
        : Repertoire.Items.All(item => item.Key.Direction.IsInTime()) ? PlanningWords.OnlyChanges
        : PlanningWords.OnlyHeard;

    /// <summary>The items that may be asked, in the order of the repertoire.</summary>
    internal IEnumerable<PracticeItem> Items =>
        Repertoire.Items.Where(item => Directions.Contains(item.Key.Direction) && (CanListen || !item.Key.Direction.NeedsSound()));
}
