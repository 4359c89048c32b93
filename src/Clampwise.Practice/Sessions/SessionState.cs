using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>All of a session at one moment. Changed only by <see cref="Session.Step"/>.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="Kind">What kind it is.</param>
/// <param name="Length">How long it is to last; null if it ends with its questions.</param>
/// <param name="Seed">Seed of all chance in its questions.</param>
/// <param name="Memory">What is known of the player, the answers of this session counted in.</param>
public sealed record SessionState(SessionId Id, SessionKind Kind, TimeSpan? Length, int Seed, MemoryState Memory)
{
    /// <summary>What it is called if its kind does not say it; see <see cref="SessionPlan.Title"/>.</summary>
    public string? Title { get; init; }

    /// <summary>Where it stands.</summary>
    public SessionPhase Phase { get; init; }

    /// <summary>True while its clock is stopped by the player.</summary>
    public bool IsPaused { get; init; }

    /// <summary>True while the terminal has no focus.</summary>
    public bool IsAway { get; init; }

    /// <summary>True if there is sound.</summary>
    public bool CanListen { get; init; } = true;

    /// <summary>Time practised.</summary>
    public SessionClock Clock { get; init; }

    /// <summary>Questions to come, but for the last ones.</summary>
    public ImmutableArray<PlannedItem> Queue { get; init; } = [];

    /// <summary>Easy ones to end on.</summary>
    public ImmutableArray<PlannedItem> Close { get; init; } = [];

    /// <summary>How many of them are still to be asked.</summary>
    public int ClosersLeft { get; init; }

    /// <summary>The open question; null before the first and after the last. It stays while its verdict stands.</summary>
    public OpenQuestion? Open { get; init; }

    /// <summary>The card that is shown; null while none is.</summary>
    public Card? Card { get; init; }

    /// <summary>Where the clamps stand, as far as a card has asked for it; null before the first, and again after the program was left.</summary>
    public Setup? ClampsAt { get; init; }

    /// <summary>The new shapes that were shown on cards.</summary>
    public ImmutableHashSet<ShapeKey> CardsShown { get; init; } = [];

    /// <summary>Answers so far.</summary>
    public ImmutableArray<Outcome> Outcomes { get; init; } = [];

    /// <summary>The items asked so far, the latest last, those put aside too.</summary>
    public ImmutableList<ItemKey> Asked { get; init; } = [];

    /// <summary>How often a rest was offered.</summary>
    public int RestsOffered { get; init; }

    /// <summary>How far apart questions about one shape stand.</summary>
    public int Spacing { get; init; } = Practice.Spacing.Siblings;

    /// <summary>The state before the last answer, to undo it; null if there is none.</summary>
    internal SessionState? BeforeAnswer { get; init; }

    /// <summary>The time left on a moment; null if it ends with its questions.</summary>
    public TimeSpan? LeftAt(Moment now) => Length is { } length ? length - Clock.At(now) : null;

    /// <summary>A planned session, ready to begin.</summary>
    public static SessionState Of(SessionPlan plan, SessionId id, MemoryState memory, int seed, bool canListen = true) =>
        new(id, plan.Kind, plan.Length, seed, memory)
        {
            Title = plan.Title,
            Queue = plan.Items,
            Close = plan.Close,
            ClosersLeft = Math.Min(SessionPlan.Closers, plan.Close.Length),
            CanListen = canListen,
            Spacing = Practice.Spacing.For(plan.All.Select(planned => planned.Item.Key.Shape).Distinct().Count()),
        };
}
