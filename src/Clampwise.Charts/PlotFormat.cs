namespace Clampwise.Charts;

/// <summary>How a plot is written.</summary>
public enum PlotFormat
{
    /// <summary>Lines that stay sharp at any size (SVG).</summary>
    Svg,

    /// <summary>Pixels (PNG).</summary>
    Png,
}
