using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>The program's own planner, as it is shipped.</summary>
public sealed class Shipped : IPlans
{
    /// <inheritdoc/>
    public SessionPlan Plan(PlanRequest request, int day) => DailyPlanner.Plan(request);

    /// <inheritdoc/>
    public void Saw(Attempt attempt)
    {
    }
}
