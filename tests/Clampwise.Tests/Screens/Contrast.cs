using Terminal.Gui.Drawing;

namespace Clampwise.Tests.Screens;

/// <summary>
/// Contrast as the Web Content Accessibility Guidelines 2.2 define it (W3C Recommendation, terms "relative luminance" and "contrast
/// ratio"; success criterion 1.4.3 asks for 4.5:1 at level AA).
/// </summary>
internal static class Contrast
{
    public const double Enough = 4.5;

    public static double Between(Color one, Color other)
    {
        double first = Luminance(one);
        double second = Luminance(other);
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    public static double Luminance(Color colour) =>
        (0.2126 * Linear(colour.R)) + (0.7152 * Linear(colour.G)) + (0.0722 * Linear(colour.B));

    private static double Linear(byte channel)
    {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
