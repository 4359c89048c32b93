using Terminal.Gui.Input;

namespace Clampwise.Screens.Session;

/// <summary>What a key asks for while a question is open.</summary>
internal enum SessionKey
{
    None,
    Pause,
    Hint,
    DoNotKnow,
    Skip,
    Replay,
    Slower,
    StringByString,
    Reference,
}

/// <summary>The keys of an open question. While a name is typed, letters belong to the name, and the function keys serve.</summary>
internal static class SessionKeys
{
    public static SessionKey Of(Key key, bool isTyping)
    {
        if (key == Key.Esc)
        {
            return SessionKey.Pause;
        }

        if (isTyping)
        {
            return key == Key.F2 ? SessionKey.Replay
                : key == Key.F3 ? SessionKey.Slower
                : key == Key.F4 ? SessionKey.StringByString
                : key == Key.F5 ? SessionKey.Reference
                : key == Key.F6 ? SessionKey.Hint
                : key == Key.F7 ? SessionKey.DoNotKnow
                : key == Key.F8 ? SessionKey.Skip
                : SessionKey.None;
        }

        return char.ToLowerInvariant((char)(key.AsRune.Value & 0xFFFF)) switch
        {
            'p' => SessionKey.Pause,
            'h' => SessionKey.Hint,
            'k' => SessionKey.DoNotKnow,
            'n' => SessionKey.Skip,
            'r' => SessionKey.Replay,
            'l' => SessionKey.Slower,
            'g' => SessionKey.StringByString,
            'e' => SessionKey.Reference,
            _ => SessionKey.None,
        };
    }
}
