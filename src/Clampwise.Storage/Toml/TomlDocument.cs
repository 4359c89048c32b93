using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace Clampwise.Storage;

/// <summary>Reads TOML 1.0 so that whatever is wrong with the text stands in the document's diagnostics.</summary>
public static class TomlDocument
{
    /// <summary>The document; one without entries if the text could not be read at all.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name.</param>
    public static DocumentSyntax Parse(string text, string file)
    {
        try
        {
            return SyntaxParser.Parse(text, file);
        }
        // The parser does report what is wrong, but for arrays within arrays beyond its depth it throws.
        catch (TomlException trouble)
        {
            var empty = new DocumentSyntax();
            var start = new TextPosition(0, Math.Max(0, (trouble.Line ?? 1) - 1), Math.Max(0, (trouble.Column ?? 1) - 1));
            empty.Diagnostics.Error(new SourceSpan(file, start, start), trouble.Message.ReplaceLineEndings(" "));
            return empty;
        }
    }
}
