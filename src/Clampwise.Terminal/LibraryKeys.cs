using System.Collections.Frozen;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace Clampwise.Terminal;

/// <summary>Between the library's keys and ours.</summary>
internal static class LibraryKeys
{
    private const KeyCode Masks = KeyCode.ShiftMask | KeyCode.CtrlMask | KeyCode.AltMask;

    private static readonly FrozenDictionary<KeyCode, NamedKey> s_names = new Dictionary<KeyCode, NamedKey>
    {
        [KeyCode.Enter] = NamedKey.Enter,
        [KeyCode.Esc] = NamedKey.Esc,
        [KeyCode.Tab] = NamedKey.Tab,
        [KeyCode.Backspace] = NamedKey.Backspace,
        [KeyCode.Insert] = NamedKey.Insert,
        [KeyCode.Delete] = NamedKey.Delete,
        [KeyCode.CursorUp] = NamedKey.Up,
        [KeyCode.CursorDown] = NamedKey.Down,
        [KeyCode.CursorLeft] = NamedKey.Left,
        [KeyCode.CursorRight] = NamedKey.Right,
        [KeyCode.Home] = NamedKey.Home,
        [KeyCode.End] = NamedKey.End,
        [KeyCode.PageUp] = NamedKey.PageUp,
        [KeyCode.PageDown] = NamedKey.PageDown,
        [KeyCode.F1] = NamedKey.F1,
        [KeyCode.F2] = NamedKey.F2,
        [KeyCode.F3] = NamedKey.F3,
        [KeyCode.F4] = NamedKey.F4,
        [KeyCode.F5] = NamedKey.F5,
        [KeyCode.F6] = NamedKey.F6,
        [KeyCode.F7] = NamedKey.F7,
        [KeyCode.F8] = NamedKey.F8,
        [KeyCode.F9] = NamedKey.F9,
        [KeyCode.F10] = NamedKey.F10,
        [KeyCode.F11] = NamedKey.F11,
        [KeyCode.F12] = NamedKey.F12,
    }.ToFrozenDictionary();

    /// <summary>Our press for a key of the library.</summary>
    public static KeyPress Read(Key key)
    {
        bool isNamed = s_names.TryGetValue(key.KeyCode & ~Masks, out NamedKey name);
        KeyPress press = isNamed ? KeyPress.Of(name) : KeyPress.Of(new Key(key.KeyCode & ~(KeyCode.CtrlMask | KeyCode.AltMask)).AsRune);
        press = key.IsShift ? press.WithShift : press;
        press = key.IsCtrl ? press.WithCtrl : press;
        return key.IsAlt ? press.WithAlt : press;
    }

    /// <summary>The library's key for a press of ours.</summary>
    public static Key Write(KeyPress press)
    {
        Key key = press.Name == NamedKey.None
            ? new Key(press.Character.ToString())
            : new Key(s_names.First(pair => pair.Value == press.Name).Key);
        key = press.Modifiers.HasFlag(KeyModifiers.Shift) ? key.WithShift : key;
        key = press.Modifiers.HasFlag(KeyModifiers.Ctrl) ? key.WithCtrl : key;
        return press.Modifiers.HasFlag(KeyModifiers.Alt) ? key.WithAlt : key;
    }
}
