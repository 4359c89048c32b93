using System.Globalization;
using System.Text;

namespace Clampwise.Settings;

/// <summary>Writes texts as TOML does.</summary>
internal static class TomlText
{
    /// <summary>A basic string (TOML 1.0, "String"); its escapes are those of JSON as well.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (char sign in text)
        {
            quoted.Append(sign switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                _ when char.IsControl(sign) => $"\\u{((int)sign).ToString("X4", CultureInfo.InvariantCulture)}",
                _ => sign.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
