using System.Collections.Concurrent;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Time;

namespace Clampwise.Terminal;

/// <summary>
/// Reads what the terminal sends as the library does, but passes over what cannot be read: the library fails on a key that it has no name
/// for (Menu, F13 to F20), on a code that is no character, and on a number that is too large.
/// </summary>
internal sealed class TerminalSequences : AnsiInputProcessor
{
    // rxvt's sequences for these two keys, which the library does not know.
    private static readonly (string Sequence, Key Key)[] s_further = [("[7~", Key.Home), ("[8~", Key.End)];
    private Key? _furtherKey;

    // From here on a failure is one of the program, and is to be seen.
    private bool _isHandedOver;

    public TerminalSequences(ConcurrentQueue<char> queue, ITimeProvider? time) : base(queue, time)
    {
        foreach ((string sequence, Key key) in s_further)
        {
            GetParser().ExpectResponse(sequence, null, _ => _furtherKey = key, null, persistent: true);
        }
    }

    /// <inheritdoc/>
    protected override void Process(char input)
    {
        PassOverUnreadable(() => base.Process(input));
        if (_furtherKey is { } key)
        {
            _furtherKey = null;
            RaiseKeyDownEvent(new Key(key));
        }
    }

    /// <inheritdoc/>
    protected override void ProcessAfterParsing(char input) => PassOverUnreadable(() => base.ProcessAfterParsing(input));

    /// <inheritdoc/>
    protected override Key OnKeyboardEventParsed(Key keyEvent)
    {
        Key key = base.OnKeyboardEventParsed(keyEvent);
        _isHandedOver = true;
        return key;
    }

    /// <inheritdoc/>
    protected override bool ShouldSuppressFallbackKeyDown(Key key)
    {
        bool isSuppressed = base.ShouldSuppressFallbackKeyDown(key);
        _isHandedOver = true;
        return isSuppressed;
    }

    // The library has begun anew by the time that it fails.
    private void PassOverUnreadable(Action read)
    {
        _isHandedOver = false;
        try
        {
            read();
        }
        catch (Exception) when (!_isHandedOver)
        {
            // A key that nobody can name does nothing.
        }
    }
}
