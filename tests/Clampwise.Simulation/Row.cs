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

    private double? Share(Curve other, double recall, int from)
    {
        double Minutes(Run run) => run.Minutes(from, Table.To);
        return Shipped.At(recall, Minutes) / other.At(recall, Minutes);
    }
}
