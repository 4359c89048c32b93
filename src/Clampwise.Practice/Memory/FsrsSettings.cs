namespace Clampwise.Practice;

/// <summary>What the player may set about the memory model.</summary>
/// <param name="DesiredRetention">
/// The chance of recall at which something is due, .7 to .97: below, too much is forgotten; above, the questions multiply.
/// </param>
/// <param name="CountsSameDay">True if further answers on one day change the memory's strength.</param>
/// <param name="MaximumIntervalDays">The longest interval in days, 1 to 36500.</param>
public sealed record FsrsSettings(double DesiredRetention = 0.9, bool CountsSameDay = true, int MaximumIntervalDays = 36500)
{
    /// <summary>Recall of 90 %, same-day answers on, at most a hundred years.</summary>
    public static FsrsSettings Usual { get; } = new();
}
