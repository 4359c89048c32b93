using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>The wording of faults with settings.</summary>
internal static class SettingsWords
{
    private const int LongestFound = 40;

    public static Fault Wrong(string expected, string found) => new($"expected {expected}, found {Short(found)}");

    public static string Of(Setting setting, Fault fault) => $"{setting.Key}: {fault.Message}";

    public static string UnknownKey(string key)
    {
        string table = key.Split('.')[0];
        Setting[] beside = [.. SettingList.All.Where(setting => setting.Table == table)];
        return beside.Length > 0 && key != table
            ? $"there is no setting '{Short(key)}': [{table}] has {string.Join(", ", beside.Select(setting => setting.Name))}"
            : $"there is no setting '{Short(key)}': expected a table {string.Join(", ", SettingList.Tables.Select(known => $"[{known.Table}]"))} with its keys beneath";
    }

    public static string ListOfTables(string name) => $"[[{name}]] is a list of tables: write [{name}] once";

    private static string Short(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return line.Length <= LongestFound ? line : line[..LongestFound] + "...";
    }
}
