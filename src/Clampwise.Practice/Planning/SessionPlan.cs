using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What is to be asked, in order.</summary>
/// <param name="Kind">The kind of session.</param>
/// <param name="Items">The questions but for the last ones.</param>
/// <param name="Close">Easy ones to choose the last <see cref="Closers"/> questions from when the time is nearly over.</param>
/// <param name="Length">How long it is to last; null if it ends with its questions.</param>
public sealed record SessionPlan(SessionKind Kind, ImmutableArray<PlannedItem> Items, ImmutableArray<PlannedItem> Close, TimeSpan? Length)
{
    /// <summary>How many easy questions close a session.</summary>
    public const int Closers = 2;

    /// <summary>What the session is called if its kind does not say it: the title of the one drill that it is about; else null.</summary>
    public string? Title { get; init; }

    /// <summary>How many items are due in all, whether they fit or not.</summary>
    public int DueInAll { get; init; }

    /// <summary>The share that is expected to go right, 0 to 1, luck left out; 80 to 90 % make the best session (Wilson et al. 2019).</summary>
    public double ExpectedRight { get; init; }

    /// <summary>The plan for a backlog; null if there is none.</summary>
    public Backlog? Backlog { get; init; }

    /// <summary>Why there is nothing to ask, in one sentence without its capital; null if there is something.</summary>
    public string? WhyEmpty { get; init; }

    /// <summary>The questions as blocks of one setup, in order; the clamps move once between each two.</summary>
    public ImmutableArray<PlannedBlock> Blocks => PlannedBlock.Cut(Items);

    /// <summary>Every planned question.</summary>
    public IEnumerable<PlannedItem> All => Items.Concat(Close);

    /// <summary>True if there is nothing to ask.</summary>
    public bool IsEmpty => Items.IsEmpty && Close.IsEmpty;
}
