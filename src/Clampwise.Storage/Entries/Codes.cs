using System.Text.Json;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// How the values of an enumeration are written in files: their names in lower case with hyphens. A test pins them, since files
/// outlive a renaming.
/// </summary>
internal static class Codes<T> where T : struct, Enum
{
    private static readonly T[] s_values = Enum.GetValues<T>();
    private static readonly string[] s_codes = [.. s_values.Select(value => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString()))];

    /// <summary>All codes.</summary>
    public static IReadOnlyList<string> All => s_codes;

    /// <summary>The code of a value.</summary>
    public static string Of(T value) => s_codes[Array.IndexOf(s_values, value)];

    /// <summary>The value of a code.</summary>
    public static Result<T> Parse(string code) =>
        Array.IndexOf(s_codes, code) is >= 0 and var index ? s_values[index] : StorageWords.NoSuchCode(code, s_codes);
}
