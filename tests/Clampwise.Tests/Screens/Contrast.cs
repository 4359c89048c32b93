using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

/// <summary>
/// Contrast as the Web Content Accessibility Guidelines 2.2 define it (W3C Recommendation, terms "relative luminance" and "contrast
/// ratio"; success criterion 1.4.3 asks for 4.5:1 at level AA).
/// </summary>
internal static class Contrast
{
    public const double Enough = 4.5;

    public static double Between(Rgb one, Rgb other)
    {
        double first = Luminance(one);
        double second = Luminance(other);
        return (Math.Max(first, second) + 0.05) / (Math.Min(first, second) + 0.05);
    }

    public static double Luminance(Rgb colour) =>
        (0.2126 * Linear(colour.Red)) + (0.7152 * Linear(colour.Green)) + (0.0722 * Linear(colour.Blue));

    private static double Linear(byte channel)
    {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
