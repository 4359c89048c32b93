namespace Clampwise.Practice;

/// <summary>How an answer moves the memory of an item: the published model, with care for answers that were warm from another direction.</summary>
internal static class MemoryMove
{
    /// <summary>The memory after the first answer. Warm from another direction, a first success shows less than it seems to.</summary>
    public static Memory First(Grade grade, bool isPrimed, Fsrs model) => model.First(isPrimed && grade > Grade.Strained ? Grade.Strained : grade);

    /// <summary>
    /// The memory after one more answer. A success just after the same shape was asked another way does not raise stability, and says
    /// nothing about difficulty.
    /// </summary>
    /// <param name="before">The memory before it.</param>
    /// <param name="days">Practice days since the answer before, 0 or more.</param>
    /// <param name="grade">The grade.</param>
    /// <param name="isPrimed">True if the answer was warm.</param>
    /// <param name="model">The model.</param>
    public static Memory Next(Memory before, int days, Grade grade, bool isPrimed, Fsrs model)
    {
        Memory next = model.Next(before, days, grade);
        return isPrimed && grade != Grade.Missed ? before with { Stability = Math.Min(next.Stability, before.Stability) } : next;
    }
}
