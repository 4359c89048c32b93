using System.Text;

namespace Clampwise.Terminal;

/// <summary>
/// A key as it was pressed: a named key or a character, and what was held with it. The default one is a key that the program knows
/// nothing of. Two presses are equal if all of it is.
/// </summary>
public readonly record struct KeyPress
{
    private KeyPress(NamedKey name, Rune character, KeyModifiers modifiers) => (Name, Character, Modifiers) = (name, character, modifiers);

    /// <summary>The named key; none for a character.</summary>
    public NamedKey Name { get; }

    /// <summary>The character on the key, shifted if Shift was held; U+0000 for a named key.</summary>
    public Rune Character { get; }

    /// <summary>What was held.</summary>
    public KeyModifiers Modifiers { get; }

    public static KeyPress Enter => Of(NamedKey.Enter);

    public static KeyPress Esc => Of(NamedKey.Esc);

    public static KeyPress Tab => Of(NamedKey.Tab);

    public static KeyPress Backspace => Of(NamedKey.Backspace);

    public static KeyPress Delete => Of(NamedKey.Delete);

    public static KeyPress Up => Of(NamedKey.Up);

    public static KeyPress Down => Of(NamedKey.Down);

    public static KeyPress Left => Of(NamedKey.Left);

    public static KeyPress Right => Of(NamedKey.Right);

    public static KeyPress Home => Of(NamedKey.Home);

    public static KeyPress End => Of(NamedKey.End);

    public static KeyPress PageUp => Of(NamedKey.PageUp);

    public static KeyPress PageDown => Of(NamedKey.PageDown);

    /// <summary>The space bar, a character like any other.</summary>
    public static KeyPress Space => Of(' ');

    /// <summary>The character that the press types: printable, and neither Ctrl nor Alt held; U+0000 if it types none, or one beyond the first plane.</summary>
    public char Sign => Text is [var sign] ? sign : '\0';

    /// <summary>What the press types: one character, or nothing.</summary>
    public string Text =>
        (Modifiers & (KeyModifiers.Ctrl | KeyModifiers.Alt)) == 0 && Character.Value >= ' ' && !Rune.IsControl(Character) ? Character.ToString() : "";

    /// <summary>The same with Shift held; a character is shifted by being another one.</summary>
    public KeyPress WithShift => Name == NamedKey.None ? this : new(Name, Character, Modifiers | KeyModifiers.Shift);

    /// <summary>The same with Ctrl held.</summary>
    public KeyPress WithCtrl => new(Name, Character, Modifiers | KeyModifiers.Ctrl);

    /// <summary>The same with Alt held.</summary>
    public KeyPress WithAlt => new(Name, Character, Modifiers | KeyModifiers.Alt);

    /// <summary>A named key alone.</summary>
    public static KeyPress Of(NamedKey name) => new(name, default, KeyModifiers.None);

    /// <summary>A character of the first plane alone; half of a surrogate pair is no character, and gives the default.</summary>
    public static KeyPress Of(char sign) => Rune.TryCreate(sign, out Rune character) ? Of(character) : default;

    /// <summary>A character alone.</summary>
    public static KeyPress Of(Rune character) => new(NamedKey.None, character, KeyModifiers.None);

    /// <summary>A function key, 1 to 12.</summary>
    public static KeyPress F(int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, 12);
        return Of(NamedKey.F1 + (number - 1));
    }

    /// <summary>Such as <c>Ctrl+c</c>, <c>Shift+Tab</c>, <c>x</c>.</summary>
    public override string ToString()
    {
        string held = Modifiers == KeyModifiers.None ? "" : Modifiers.ToString().Replace(", ", "+", StringComparison.Ordinal) + "+";
        return held + (Name != NamedKey.None ? Name.ToString() : Character.Value == 0 ? "unknown" : Character.ToString());
    }
}
