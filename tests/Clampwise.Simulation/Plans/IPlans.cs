using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>One way of planning a day's session.</summary>
public interface IPlans
{
    /// <summary>The day's plan.</summary>
    SessionPlan Plan(PlanRequest request, int day);

    /// <summary>An answer was given.</summary>
    void Saw(Attempt attempt);
}
