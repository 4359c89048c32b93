using Clampwise.Fretboard;

namespace Clampwise.Plain;

/// <summary>A tuning plan line by line.</summary>
internal static class TuningLines
{
    /// <summary>A plan, one line a target or pair.</summary>
    public static IEnumerable<string> Of(TuningPlan plan)
    {
        foreach (StringNumber number in plan.Order)
        {
            StringTarget target = plan.Targets.First(candidate => candidate.String == number);
            yield return $"string {number}  {target.Spelled,-4} {target.Hertz,7:0.00} Hz  {(target.IsHeld ? "held: expect it sharp" : "free")}";
        }

        foreach (TuningPair pair in plan.Pairs)
        {
            yield return pair.Advice;
        }
    }
}
