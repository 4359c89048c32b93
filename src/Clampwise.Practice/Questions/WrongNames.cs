using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Picks the wrong names to choose from, so that neither root nor bass alone gives the right one away.</summary>
internal static class WrongNames
{
    /// <summary>
    /// So many choices with different names: the traps first, then what is likeliest, two in three of them on the right root and
    /// bass wherever there are such, else on one of the two (our judgement).
    /// </summary>
    /// <param name="traps">What must stand among them.</param>
    /// <param name="likely">The others, likeliest first.</param>
    /// <param name="spare">More, asked only if too few are on the right root and bass.</param>
    /// <param name="shared">How many of the right root and the right bass a choice has, 0 to 2.</param>
    /// <param name="count">How many are wanted.</param>
    public static ImmutableArray<Choice> Of(
        ImmutableArray<Choice> traps, IEnumerable<Choice> likely, IEnumerable<Choice> spare, Func<Choice, int> shared, int count)
    {
        Choice[] all = [.. likely.DistinctBy(choice => choice.Text)];
        bool IsAlike(Choice choice) => shared(choice) == 2;
        bool IsHalfAlike(Choice choice) => shared(choice) == 1;
        int alike = (((count * 2) + 2) / 3) - traps.Count(IsAlike);
        IEnumerable<Choice> close = all.Where(IsAlike).Concat(spare.Where(IsAlike)).Concat(all.Where(IsHalfAlike))
            .ExceptBy(traps.Select(trap => trap.Text), choice => choice.Text).Take(alike);
        return [.. traps.Concat(close).Concat(all.Where(choice => !IsAlike(choice))).Concat(all).DistinctBy(choice => choice.Text).Take(count)];
    }
}
