using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>How a learner's memory really is. No planner sees it.</summary>
public interface ITruth
{
    /// <summary>The chance that an item is recalled, 0 to 1; 0 for what was never shown.</summary>
    /// <param name="item">The item.</param>
    /// <param name="time">Days since the first practice day, with parts of a day.</param>
    double Recall(ItemKey item, double time);

    /// <summary>The item was asked, and its answer shown.</summary>
    /// <param name="item">The item.</param>
    /// <param name="time">When, in days.</param>
    /// <param name="isRecalled">True if it was recalled, false if it was only read.</param>
    void Practise(ItemKey item, double time, bool isRecalled);
}
