namespace Clampwise.Simulation;

/// <summary>Draws that a plain random source lacks.</summary>
internal static class Chances
{
    /// <summary>A standard normal draw (Box and Muller).</summary>
    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
