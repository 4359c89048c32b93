using Clampwise.Theory;
using Terminal.Gui.Input;

namespace Clampwise.Screens.Session;

/// <summary>A chord name while it is typed.</summary>
/// <param name="Text">What stands there.</param>
internal sealed record Entry(string Text)
{
    private const int LongestName = 24;
    private const string Signs = "#b♯♭+-°ø△Δ()/,^ ";

    // House spellings of the names that drills use most; completion only saves typing, any reading of a name is taken.
    private static readonly string[] s_endings =
        ["", "m", "5", "sus2", "sus4", "add9", "add4", "6", "6/9", "7", "m7", "maj7", "m(add9)", "m(add4)", "m6", "7sus4", "9", "maj9", "m9", "11", "m11", "dim", "aug", "m7b5"];

    public static Entry Empty { get; } = new("");

    /// <summary>The entry after a key; null if the key is none of its own.</summary>
    public Entry? Press(Key key)
    {
        if (key == Key.Backspace)
        {
            return Text.Length > 0 ? new Entry(Text[..^1]) : this;
        }

        if (key == Key.Tab)
        {
            return new Entry(Completions.FirstOrDefault(name => name.Length > Text.Length) ?? Text);
        }

        int value = key.AsRune.Value;
        bool isSign = value is > 0 and < char.MaxValue && (char.IsAsciiLetterOrDigit((char)value) || Signs.Contains((char)value, StringComparison.Ordinal));
        if (!isSign || key.IsCtrl || key.IsAlt || Text.Length >= LongestName)
        {
            return null;
        }

        // A name starts with a capital; with one hand free nobody should need Shift for it.
        char sign = (char)value;
        return new Entry(Text + (Text.Length == 0 && sign is >= 'a' and <= 'g' ? char.ToUpperInvariant(sign) : sign));
    }

    /// <summary>Names that what stands there may become, the commonest first. M and m are two things: CM7 must not become Cm7.</summary>
    public IEnumerable<string> Completions
    {
        get
        {
            int root = Text.Length > 1 && Text[1] is '#' or 'b' or '♯' or '♭' ? 2 : 1;
            return Text.Length >= root && NoteName.Parse(Text[..root]).IsGood
                ? s_endings.Where(ending => ending.StartsWith(Text[root..], StringComparison.Ordinal)).Select(ending => Text[..root] + ending)
                : [];
        }
    }
}
