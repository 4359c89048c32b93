namespace Clampwise.Simulation;

/// <summary>What a way of planning reaches as its one setting is moved: read between the settings that were run.</summary>
public sealed class Curve
{
    private readonly (double Recall, Run Run)[] _points;

    /// <summary>A curve through runs.</summary>
    public Curve(IEnumerable<Run> runs) => _points = [.. runs.Select(run => (run.Recall(Table.From, Table.To), run)).OrderBy(point => point.Item1)];

    /// <summary>A figure at a mean recall; null where the settings that were run do not reach so far.</summary>
    public double? At(double recall, Func<Run, double> figure) => Between(recall, point => point.Recall, figure);

    /// <summary>A figure where another one has a value; null where the settings that were run do not reach so far.</summary>
    public double? Where(Func<Run, double> other, double value, Func<Run, double> figure) => Between(value, point => other(point.Run), figure);

    private double? Between(double value, Func<(double Recall, Run Run), double> along, Func<Run, double> figure)
    {
        (double X, double Y)[] points = [.. _points.Select(point => (along(point), figure(point.Run))).OrderBy(point => point.Item1)];
        for (int i = 1; i < points.Length; i++)
        {
            if (value >= points[i - 1].X && value <= points[i].X)
            {
                double width = points[i].X - points[i - 1].X;
                double share = width > 0 ? (value - points[i - 1].X) / width : 0;
                return points[i - 1].Y + (share * (points[i].Y - points[i - 1].Y));
            }
        }

        return null;
    }
}
