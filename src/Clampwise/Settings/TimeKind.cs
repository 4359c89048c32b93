using System.Globalization;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>A time of the day, in steps of half an hour.</summary>
internal sealed class TimeKind : SettingKind<TimeOnly>
{
    private const string Format = "HH:mm";
    private const double StepMinutes = 30.0;

    public override string Expected => "a time of the day in quotes, from \"00:00\" to \"23:59\"";

    public override string ExpectedTyped => "a time of the day from 00:00 to 23:59";

    public override Result<TimeOnly> Read(TomlValue value) => value is TomlValue.Text { Value: var text } ? ReadText(text) : Wrong(value.Written);

    public override Result<TimeOnly> Type(string text) =>
        TimeOnly.TryParseExact(text.Trim(), [Format, "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time) ? time : WrongTyped(text);

    public override string Write(TimeOnly value) => TomlText.Quote(Show(value));

    public override string Show(TimeOnly value) => value.ToString(Format, CultureInfo.InvariantCulture);

    public override string Edit(TimeOnly value) => Show(value);

    public override TimeOnly Step(TimeOnly value, int by)
    {
        double steps = value.ToTimeSpan().TotalMinutes / StepMinutes;
        double next = by > 0 ? Math.Floor(steps) + by : Math.Ceiling(steps) + by;
        return TimeOnly.MinValue.AddMinutes(next * StepMinutes);
    }
}
