using Clampwise.Storage;
using Clampwise.Theory;
using Tomlyn.Syntax;

namespace Clampwise.Settings;

/// <summary>Puts one value into the text of a settings file; comments, order and everything else stay as they are.</summary>
internal static class SettingsEdit
{
    private const string Here = "settings";

    /// <summary>The text with the value, or why it could not be put there.</summary>
    public static Result<string> Put(string text, Setting setting, string written)
    {
        DocumentSyntax document = TomlDocument.Parse(text, Here);
        if (document.Diagnostics.FirstOrDefault() is { } message)
        {
            return SettingsWords.CannotEdit(new Fault($"line {message.Span.Start.Line + 1}: {message.Message}"));
        }

        // Which place is allowed depends on how the table was written; the first that reads back is taken.
        string? edited = Candidates(text, document, setting, written).FirstOrDefault(candidate => ReadsBack(candidate, setting, written));
        return edited is null ? SettingsWords.CannotPlace(setting.Key, written) : edited;
    }

    private static IEnumerable<string> Candidates(string text, DocumentSyntax document, Setting setting, string written)
    {
        string newLine = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        if (TomlEntries.Of(document).FirstOrDefault(entry => entry.Path == setting.Key) is { Value: { } value })
        {
            yield return text[..value.Span.Start.Offset] + written + text[(value.Span.End.Offset + 1)..];
            yield break;
        }

        if (document.Tables.FirstOrDefault(table => table is TableSyntax && TomlEntries.NameOf(table) == setting.Table) is { } home)
        {
            SyntaxNode last = home.Items.LastOrDefault() ?? (SyntaxNode?)home.EndOfLineToken ?? home;
            yield return Insert(text, last.Span.End.Offset + 1, $"{setting.Name} = {written}", newLine);
        }

        yield return Insert(text, text.Length, $"{(text.Length == 0 ? "" : newLine)}[{setting.Table}]{newLine}{setting.Name} = {written}", newLine);
        int top = document.KeyValues.LastOrDefault() is { } entry ? entry.Span.End.Offset + 1 : 0;
        yield return Insert(text, top, $"{setting.Table}.{setting.Name} = {written}", newLine);
    }

    private static string Insert(string text, int at, string line, string newLine)
    {
        int place = Math.Min(at, text.Length);
        bool isAtLineStart = place == 0 || text[place - 1] == '\n';
        return $"{text[..place]}{(isAtLineStart ? "" : newLine)}{line}{newLine}{text[place..]}";
    }

    private static bool ReadsBack(string text, Setting setting, string written)
    {
        DocumentSyntax document = TomlDocument.Parse(text, Here);
        return document.Diagnostics.Count == 0
            && TomlEntries.Of(document).FirstOrDefault(entry => entry.Path == setting.Key) is { Value: { } value }
            && setting.Read(PlayerSettings.Usual, value).TryGet(out PlayerSettings? read, out _)
            && setting.Write(read) == written;
    }
}
