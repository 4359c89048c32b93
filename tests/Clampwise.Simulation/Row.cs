using System.Globalization;

namespace Clampwise.Simulation;

/// <summary>One learner.</summary>
/// <param name="Name">The learner.</param>
/// <param name="Asked85">The program's planner, asked for .85.</param>
/// <param name="Asked90">The program's planner, asked for .90.</param>
/// <param name="Shipped">The program's planner.</param>
/// <param name="Robin">Round robin along the same opening.</param>
/// <param name="Falling">The ladder on which a miss falls to the first step.</param>
/// <param name="Stepping">The ladder on which a miss is one step back.</param>
/// <param name="Lottery">Items drawn by chance.</param>
public sealed record Row(string Name, Run Asked85, Run Asked90, Curve Shipped, Curve Robin, Curve Falling, Curve Stepping, Curve Lottery)
{
    /// <summary>Minutes of the program's planner from a day on as a share of the round robin's.</summary>
    public double? OfRobin(double recall, int from) => Share(Robin, recall, from);

    /// <summary>Minutes as a share of the better ladder's.</summary>
    public double? OfLadder(double recall, int from) =>
        Share(Falling, recall, from) is var falling && Share(Stepping, recall, from) is var stepping && falling is { } one && stepping is { } other
            ? Math.Max(one, other)
            : falling ?? stepping;

    /// <summary>Minutes as a share of the lottery's.</summary>
    public double? OfLottery(double recall, int from) => Share(Lottery, recall, from);

    /// <summary>Mean true recall on day 30 less that of a round robin in the same minutes.</summary>
    public double? OverRobinOnDay30 => Asked90.Days[29].All - Robin.Where(run => run.Minutes(1, 29), Asked90.Minutes(1, 29), run => run.Days[29].All);

    /// <summary>The line of the table.</summary>
    public string Line => string.Create(CultureInfo.InvariantCulture,
        $"{Name,-10} | asked {Asked85.Recall(Table.From, Table.To):0.000} {Asked90.Recall(Table.From, Table.To):0.000} | 1-150 of robin {OfRobin(.85, 1):0.00}/{OfRobin(.9, 1):0.00} of ladder {OfLadder(.85, 1):0.00}/{OfLadder(.9, 1):0.00} of lottery {OfLottery(.85, 1):0.00}/{OfLottery(.9, 1):0.00} | 60-150 of robin {OfRobin(.85, 60):0.00}/{OfRobin(.9, 60):0.00} of ladder {OfLadder(.85, 60):0.00}/{OfLadder(.9, 60):0.00} | day 30 {OverRobinOnDay30:+0.000;-0.000} | minutes {Asked90.Minutes(1, 150):0} {Asked90.Minutes(60, 150):0} robin {Robin.At(.85, run => run.Minutes(1, 150)):0}/{Robin.At(.85, run => run.Minutes(60, 150)):0} {Robin.At(.9, run => run.Minutes(1, 150)):0}/{Robin.At(.9, run => run.Minutes(60, 150)):0} opened {Asked90.Opening.Count} by {Asked90.Opening.Values.Max()}");

    private double? Share(Curve other, double recall, int from)
    {
        double Minutes(Run run) => run.Minutes(from, Table.To);
        return Shipped.At(recall, Minutes) / other.At(recall, Minutes);
    }
}
