using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>A drill as it stands in a file.</summary>
/// <param name="Drill">The drill.</param>
/// <param name="Order">Its place for new learners, 0 to 9999: lower ones are met first.</param>
/// <param name="Origin">Where it comes from.</param>
public sealed record DrillSheet(Drill Drill, int Order, DrillOrigin Origin)
{
    /// <summary>The highest place; a file that says nothing stands there.</summary>
    public const int LastOrder = 9999;
}
