using System.Globalization;
using System.Text;

namespace Clampwise.Storage;

/// <summary>Writes texts as TOML does.</summary>
public static class TomlText
{
    /// <summary>A basic string (TOML 1.0, "String"): quote, backslash and control characters are escaped; its escapes are those of JSON as well.</summary>
    public static string Quote(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (char sign in text)
        {
            _ = sign switch
            {
                '"' or '\\' => quoted.Append('\\').Append(sign),
                '\n' => quoted.Append("\\n"),
                '\t' => quoted.Append("\\t"),
                _ when char.IsControl(sign) => quoted.Append("\\u").Append(((int)sign).ToString("X4", CultureInfo.InvariantCulture)),
                _ => quoted.Append(sign),
            };
        }

        return quoted.Append('"').ToString();
    }
}
