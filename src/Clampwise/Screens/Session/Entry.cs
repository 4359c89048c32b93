using System.Collections.Immutable;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens.Session;

/// <summary>A chord name while it is typed.</summary>
/// <param name="Text">What stands there.</param>
/// <param name="Typed">What was typed of it, if Tab has completed the rest; null if all of it was.</param>
internal sealed record Entry(string Text, string? Typed = null)
{
    private const int LongestName = 24;
    private const string Signs = "#b♯♭+-°ø△Δ()/,^ ";

    // House spellings of the names that drills use most; completion only saves typing, any reading of a name is taken.
    private static readonly string[] s_endings =
        ["", "m", "5", "sus2", "sus4", "add9", "add4", "6", "6/9", "7", "m7", "maj7", "m(add9)", "m(add4)", "m6", "7sus4", "9", "maj9", "m9", "11", "m11", "dim", "aug", "m7b5"];

    private static readonly ImmutableArray<KeyPress> s_typed =
        [.. Enumerable.Range('0', 'z' - '0' + 1).Select(sign => (char)sign).Where(char.IsAsciiLetterOrDigit).Concat(Signs).Select(KeyPress.Of)];

    public static Entry Empty { get; } = new("");

    /// <summary>The keys that change it.</summary>
    /// <param name="use">Told the entry after a key.</param>
    public IReadOnlyList<PageKey> Keys(Action<Entry> use) =>
    [
        PageKey.On(KeyPress.Tab, "complete", () => use(Completed())),
        new PageKey("letters", "a name", s_typed, press => use(With(press.Sign))).InHelpAlone,
        PageKey.On(KeyPress.Backspace, "one sign back", () => use(Text.Length > 0 ? new Entry(Text[..^1]) : this)).InHelpAlone,
    ];

    // A name starts with a capital; with one hand free nobody should need Shift for it.
    private Entry With(char sign) =>
        Text.Length >= LongestName ? this : new Entry(Text + (Text.Length == 0 ? TypedChord.Capital(sign) : sign));

    /// <summary>Names that what was typed may become, the commonest first. M and m are two things: CM7 must not become Cm7.</summary>
    public IEnumerable<string> Completions
    {
        get
        {
            string typed = Typed ?? Text;
            int root = typed.Length > 1 && typed[1] is '#' or 'b' or '♯' or '♭' ? 2 : 1;
            return typed.Length >= root && NoteName.Parse(typed[..root]).IsGood
                ? s_endings.Where(ending => ending.StartsWith(typed[root..], StringComparison.Ordinal)).Select(ending => typed[..root] + ending)
                : [];
        }
    }

    // Each further Tab takes the next name that fits, and after the last one the first again.
    private Entry Completed()
    {
        string typed = Typed ?? Text;
        string[] longer = [.. Completions.Where(name => name.Length > typed.Length)];
        return longer.Length == 0 ? this : new Entry(longer[(Array.IndexOf(longer, Text) + 1) % longer.Length], typed);
    }
}
