using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Puts one value into a TOML text; comments, order and everything else stay as they are.</summary>
internal static class TomlEdit
{
    /// <summary>The text with the value, or why it could not be put there.</summary>
    /// <param name="text">The text.</param>
    /// <param name="table">The table that the key stands in.</param>
    /// <param name="key">The key in that table.</param>
    /// <param name="written">The value in TOML.</param>
    /// <param name="readsBack">True for a value that means what was written.</param>
    public static Result<string> Put(string text, string table, string key, string written, Func<TomlValue, bool> readsBack)
    {
        var file = TomlFile.Parse(text, "");
        if (file.Faults.FirstOrDefault() is { } fault)
        {
            return StorageWords.CannotEdit(fault);
        }

        // Which place is allowed depends on how the table was written; the first that reads back is taken.
        string? edited = Candidates(file, table, key, written).FirstOrDefault(candidate => ReadsBack(candidate, $"{table}.{key}", readsBack));
        return edited is null ? StorageWords.CannotPlace($"{table}.{key}", written) : edited;
    }

    private static IEnumerable<string> Candidates(TomlFile file, string table, string key, string written)
    {
        string text = file.Text;
        string newLine = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        if (Find(file, $"{table}.{key}") is { } value)
        {
            yield return text[..value.Start] + written + text[value.End..];
            yield break;
        }

        if (file.Tables.FirstOrDefault(known => !known.IsListed && known.Name == table) is { } home)
        {
            yield return Insert(text, home.End, $"{key} = {written}", newLine);
        }

        yield return Insert(text, text.Length, $"{(text.Length == 0 ? "" : newLine)}[{table}]{newLine}{key} = {written}", newLine);
        yield return Insert(text, file.Head.End, $"{table}.{key} = {written}", newLine);
    }

    private static TomlValue? Find(TomlFile file, string key) => file.Entries.FirstOrDefault(entry => entry.Key == key)?.Value;

    private static string Insert(string text, int at, string line, string newLine)
    {
        int place = Math.Min(at, text.Length);
        bool isAtLineStart = place == 0 || text[place - 1] == '\n';
        return $"{text[..place]}{(isAtLineStart ? "" : newLine)}{line}{newLine}{text[place..]}";
    }

    private static bool ReadsBack(string text, string key, Func<TomlValue, bool> readsBack)
    {
        var file = TomlFile.Parse(text, "");
        return file.Faults.IsEmpty && Find(file, key) is { } value && readsBack(value);
    }
}
