using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// All that the program has learnt of the player, folded from the log of attempts and from nothing else. It is the same for every
/// order in which the entries of a log are read.
/// </summary>
public sealed record MemoryState
{
    private MemoryState(Fsrs model) => Model = model;

    /// <summary>The memory model with the weights that count.</summary>
    public Fsrs Model { get; init; }

    /// <summary>Every item that was ever answered.</summary>
    public ImmutableDictionary<ItemKey, ItemMemory> Items { get; init; } = ImmutableDictionary<ItemKey, ItemMemory>.Empty;

    /// <summary>Usual thinking times; see <see cref="UsualTimeIn"/>.</summary>
    public ImmutableDictionary<Direction, UsualTime> UsualTimes { get; init; } = ImmutableDictionary<Direction, UsualTime>.Empty;

    /// <summary>Skills; see <see cref="RatingIn"/>.</summary>
    public ImmutableDictionary<SkillKey, Skill> Skills { get; init; } = ImmutableDictionary<SkillKey, Skill>.Empty;

    /// <summary>What was taken for what.</summary>
    public ImmutableDictionary<Confusion, ConfusionCount> Confusions { get; init; } = ImmutableDictionary<Confusion, ConfusionCount>.Empty;

    /// <summary>What the player's own answers say beyond the model.</summary>
    public Correction Correction { get; init; } = Correction.None;

    /// <summary>How the first answers of a later day go.</summary>
    public FirstAnswers FirstAnswers { get; init; } = FirstAnswers.Guess;

    /// <summary>The last answer; null if there is none, or if it told two shapes apart with the one before it.</summary>
    public LastAnswer? Before { get; init; }

    /// <summary>How long questions take beside the thinking.</summary>
    public UsualRound UsualRound { get; init; } = UsualRound.Guess;

    /// <summary>When the last attempt was answered; the earliest instant if there is none.</summary>
    public DateTimeOffset LatestAt { get; init; } = DateTimeOffset.MinValue;

    /// <summary>Attempts that count.</summary>
    public int AttemptCount { get; init; }

    /// <summary>The state of an empty log.</summary>
    public static MemoryState Empty(FsrsSettings settings) => new(new Fsrs(FsrsWeights.Default, settings));

    /// <summary>The state of an empty log with weights of the player's own.</summary>
    public static MemoryState Empty(FsrsSettings settings, FsrsWeights weights) => new(new Fsrs(weights, settings));

    /// <summary>The state of a whole log, in whatever order its entries come.</summary>
    public static MemoryState Rebuild(IEnumerable<LogEntry> entries, FsrsSettings settings)
    {
        ImmutableArray<LogEntry> all = [.. entries];
        var fold = new MemoryFold(Empty(settings, LogReading.Weights(all) ?? FsrsWeights.Default));
        foreach (Attempt attempt in LogReading.Attempts(all))
        {
            fold.Add(attempt);
        }

        return fold.ToState();
    }

    /// <summary>
    /// The state with one more attempt. Equal to a rebuild if the attempt is the latest (see <see cref="IsNext"/>); after a clock
    /// that was put back, or a log merged in, rebuild.
    /// </summary>
    public MemoryState With(Attempt attempt)
    {
        var fold = new MemoryFold(this);
        fold.Add(attempt);
        return fold.ToState();
    }

    /// <summary>True if an attempt comes after all others in time, so that adding it equals rebuilding.</summary>
    public bool IsNext(Attempt attempt) => attempt.At > LatestAt;

    /// <summary>The chance of recall of an item on a day, corrected by the player's own answers; null if it was never answered.</summary>
    public double? Recall(ItemKey item, PracticeDay day) => Items.TryGetValue(item, out ItemMemory? memory) ? RecallOf(memory, day) : null;

    /// <summary>The chance of recall on a day, corrected by the player's own answers.</summary>
    public double RecallOf(ItemMemory item, PracticeDay day) => Correction.Recall(item, item.DaysSince(day), Model);

    /// <summary>The usual thinking time in a direction.</summary>
    public UsualTime UsualTimeIn(Direction direction) =>
        UsualTimes.TryGetValue(direction, out UsualTime own) ? own : UsualTime.FirstGuess(direction);

    /// <summary>The player's rating in a direction and family: that of the direction with what the family adds to it.</summary>
    public double RatingIn(Direction direction, ChordFamily family) =>
        Skills.GetValueOrDefault(new SkillKey(direction, null)).Rating + Skills.GetValueOrDefault(new SkillKey(direction, family)).Rating;

    /// <summary>True if the shape was asked in another direction on that day, so that an answer now would be warm.</summary>
    public bool IsPrimed(ItemKey item, PracticeDay day) => Directions.All.Any(direction =>
        direction != item.Direction && Items.TryGetValue(item with { Direction = direction }, out ItemMemory? sibling) && sibling.LastDay == day);

    /// <summary>True if a shape was once right in a direction in which luck has no part, without choices and without help.</summary>
    public bool WasRightFreely(ShapeKey shape) => Directions.All.Any(direction =>
        direction.Facts() is { Luck: 0, IsInTime: false } && Items.TryGetValue(new ItemKey(shape, direction), out ItemMemory? memory) && memory.FreeAnswers > 0);
}
