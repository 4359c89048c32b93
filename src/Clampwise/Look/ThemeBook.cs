using System.Collections.Immutable;
using System.Text;
using Clampwise.Theory;

namespace Clampwise.Look;

/// <summary>The themes by name, in the order in which they are offered.</summary>
internal sealed class ThemeBook(ImmutableArray<Theme> themes)
{
    /// <summary>The theme of a new installation.</summary>
    public const string Own = "own";

    /// <summary>The theme without colour.</summary>
    public const string Plain = "plain";

    private const string Resource = "themes.toml";
    private static readonly Lazy<ThemeBook> s_shipped = new(ReadShipped);

    /// <summary>The themes that travel inside the program.</summary>
    public static ThemeBook Shipped => s_shipped.Value;

    /// <summary>All of them.</summary>
    public ImmutableArray<Theme> Themes => themes;

    /// <summary>The names.</summary>
    public IEnumerable<string> Names => themes.Select(theme => theme.Name);

    /// <summary>The theme of a name; the first one if there is none of that name.</summary>
    public Theme this[string name] => themes.FirstOrDefault(theme => theme.Name == name) ?? themes[0];

    // A fault in it is a fault of the program, found by a test.
    private static ThemeBook ReadShipped()
    {
        using var reader = new StreamReader(typeof(ThemeBook).Assembly.GetManifestResourceStream(Resource)!, Encoding.UTF8);
        Result<ThemeBook> read = ThemeReader.Read(reader.ReadToEnd(), Resource);
        return read.Value;
    }
}
