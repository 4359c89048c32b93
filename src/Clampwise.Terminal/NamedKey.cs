namespace Clampwise.Terminal;

/// <summary>A key that is known by its name, since it types nothing.</summary>
public enum NamedKey
{
    /// <summary>None: the key types a character, or is nothing that the program knows.</summary>
    None,
    Enter,
    Esc,
    Tab,
    Backspace,
    Insert,
    Delete,
    Up,
    Down,
    Left,
    Right,
    Home,
    End,
    PageUp,
    PageDown,
    F1,
    F2,
    F3,
    F4,
    F5,
    F6,
    F7,
    F8,
    F9,
    F10,
    F11,
    F12,
}
