using System.Text;

namespace Clampwise.Settings;

/// <summary>Writes settings out in full, with what each one does and takes.</summary>
internal static class SettingsText
{
    private const int Width = 110;

    /// <summary>A whole file.</summary>
    public static string Of(PlayerSettings settings)
    {
        var text = new StringBuilder("# Settings of Clampwise (TOML). A key that is left out has its default value.\n");
        foreach ((string table, string heading) in SettingList.Tables)
        {
            text.Append($"\n# {heading}\n[{table}]\n");
            foreach (Setting setting in SettingList.All.Where(setting => setting.Table == table))
            {
                foreach (Look.Line line in Look.Line.Wrap($"{setting.About} Takes {setting.Expected}.", Width))
                {
                    text.Append($"# {line}\n");
                }

                text.Append($"{setting.Name} = {setting.Write(settings)}\n");
            }
        }

        return text.ToString();
    }
}
