using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>One answer as the fit sees it.</summary>
/// <param name="Days">Practice days since the last answer; 0 for the first.</param>
/// <param name="Grade">The grade.</param>
/// <param name="GuessChance">The chance of being right by luck.</param>
/// <param name="IsLabel">True if it is to be predicted: neither the first, nor on the same day, nor warm.</param>
/// <param name="IsPrimed">True if it was warm: it moves the memory as little as in <see cref="MemoryState"/>.</param>
/// <param name="Order">Its place in time among all answers, 0 for the oldest.</param>
internal readonly record struct Review(int Days, Grade Grade, double GuessChance, bool IsLabel, bool IsPrimed, int Order);

/// <summary>The answers of a log, item by item, as the fit sees them.</summary>
internal sealed class ReviewHistory
{
    private ReviewHistory(ImmutableArray<ImmutableArray<Review>> items, int count) => (Items, Count) = (items, count);

    /// <summary>The answers of each item, the oldest first.</summary>
    public ImmutableArray<ImmutableArray<Review>> Items { get; }

    /// <summary>How many answers there are.</summary>
    public int Count { get; }

    public static ReviewHistory Of(ImmutableArray<Attempt> attempts)
    {
        var items = new Dictionary<ItemKey, (ImmutableArray<Review>.Builder Reviews, PracticeDay Last)>();
        for (int order = 0; order < attempts.Length; order++)
        {
            Attempt attempt = attempts[order];
            bool isKnown = items.TryGetValue(attempt.Item, out var item);
            ImmutableArray<Review>.Builder reviews = isKnown ? item.Reviews : ImmutableArray.CreateBuilder<Review>();
            int days = isKnown ? Math.Max(0, attempt.Day - item.Last) : 0;
            reviews.Add(new Review(days, attempt.Grade, attempt.Luck, isKnown && days > 0 && !attempt.IsPrimed, attempt.IsPrimed, order));
            items[attempt.Item] = (reviews, isKnown && item.Last > attempt.Day ? item.Last : attempt.Day);
        }

        return new ReviewHistory([.. items.Values.Select(item => item.Reviews.ToImmutable())], attempts.Length);
    }
}
