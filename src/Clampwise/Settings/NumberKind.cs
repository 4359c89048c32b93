using System.Globalization;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>A number within a range, whole or with some places after the point.</summary>
/// <param name="least">The least.</param>
/// <param name="most">The greatest.</param>
/// <param name="step">What an arrow adds.</param>
/// <param name="places">Places after the point; 0 for whole numbers.</param>
/// <param name="unit">The unit, such as <c>ms</c>; empty for none.</param>
internal sealed class NumberKind(double least, double most, double step, int places, string unit = "") : SettingKind<double>
{
    public override string Expected => $"a {(places == 0 ? "whole number" : "number")} from {Plain(least)} to {Plain(most)}";

    public override Result<double> Read(TomlValue value) => value switch
    {
        TomlValue.Whole whole => InRange(whole.Value),
        TomlValue.Real real when places > 0 => InRange(real.Value),
        _ => Wrong(value.Written),
    };

    // A comma is a decimal point to many a keyboard.
    public override Result<double> Type(string text)
    {
        string number = text.Trim().Replace(',', '.');
        NumberStyles style = places == 0 ? NumberStyles.None : NumberStyles.AllowDecimalPoint;
        return double.TryParse(number, style, CultureInfo.InvariantCulture, out double value) ? InRange(value) : Wrong(text.Trim());
    }

    public override string Write(double value) =>
        places == 0 ? value.ToString("0", CultureInfo.InvariantCulture) : value.ToString("0.0" + new string('#', places - 1), CultureInfo.InvariantCulture);

    public override string Show(double value) => unit.Length == 0 ? Plain(value) : $"{Plain(value)} {unit}";

    public override string Edit(double value) => Plain(value);

    // To the next multiple of the step: from a value between two, not past it.
    public override double Step(double value, int by)
    {
        double steps = value / step;
        double next = by > 0 ? Math.Floor(steps + 1e-6) + by : Math.Ceiling(steps - 1e-6) + by;
        return Math.Clamp(Math.Round(next * step, places), least, most);
    }

    private Result<double> InRange(double value) => value >= least && value <= most ? Math.Round(value, places) : Wrong(Plain(value));

    private string Plain(double value) => value.ToString("0." + new string('#', Math.Max(places, 3)), CultureInfo.InvariantCulture);
}
