using Clampwise.Terminal;

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
    public static SessionKey Of(KeyPress key, bool isTyping)
    {
        if (key == KeyPress.Esc)
        {
            return SessionKey.Pause;
        }

        if (isTyping)
        {
            return key == KeyPress.F(2) ? SessionKey.Replay
                : key == KeyPress.F(3) ? SessionKey.Slower
                : key == KeyPress.F(4) ? SessionKey.StringByString
                : key == KeyPress.F(5) ? SessionKey.Reference
                : key == KeyPress.F(6) ? SessionKey.Hint
                : key == KeyPress.F(7) ? SessionKey.DoNotKnow
                : key == KeyPress.F(8) ? SessionKey.Skip
                : SessionKey.None;
        }

        return char.ToLowerInvariant(key.Sign) switch
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
