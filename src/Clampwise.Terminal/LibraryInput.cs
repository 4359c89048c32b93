using Terminal.Gui.Drivers;

namespace Clampwise.Terminal;

/// <summary>
/// The second way to read the terminal, by what the library lets everybody do, should the first (<see cref="TerminalInput"/>) be shut by a
/// new version of it: the library reads by itself, every 20 ms; a watch beside it sees the moment that something comes and keeps the loop
/// going round until it has been taken; and what the library fails on is passed over where its loop ends.
/// </summary>
internal sealed class LibraryInput : IDisposable
{
    // Two looks of the library.
    private static readonly TimeSpan s_untilTaken = TimeSpan.FromMilliseconds(40);
    private const int RoundMilliseconds = 2;

    // rxvt's sequences for two keys that the library does not know.
    private static readonly (string Sequence, KeyPress Key)[] s_further = [("[7~", KeyPress.Home), ("[8~", KeyPress.End)];
    private readonly CancellationTokenSource _stop = new();

    /// <summary>Watches the terminal from now on.</summary>
    /// <param name="arrived">Told when something has come, and again until it will have been taken.</param>
    /// <param name="gone">Told once when the terminal has hung up.</param>
    public LibraryInput(Action arrived, Action gone)
    {
        if (InputWait.IsThere)
        {
            new System.Threading.Thread(() => Watch(arrived, gone)) { IsBackground = true, Name = "terminal watch" }.Start();
        }
    }

    /// <summary>Keys that the library does not know by themselves.</summary>
    public static void Teach(IAnsiResponseParser parser, Action<KeyPress> press)
    {
        foreach ((string sequence, KeyPress key) in s_further)
        {
            parser.ExpectResponse(sequence, null, _ => press(key), null, persistent: true);
        }
    }

    /// <summary>
    /// True for a failure in reading what the terminal sent, which is passed over. The library has begun anew by then. What the program
    /// makes of a key is on the way back to the library too: with a line of ours on it a failure is one of the program.
    /// </summary>
    public static bool IsUnreadable(Exception failure) =>
        failure.StackTrace is { } way && way.Contains("InputProcessor", StringComparison.Ordinal) && !way.Contains("Clampwise.", StringComparison.Ordinal);

    /// <inheritdoc/>
    public void Dispose() => _stop.Cancel();

    private void Watch(Action arrived, Action gone)
    {
        while (!_stop.IsCancellationRequested)
        {
            InputEvent happened = InputWait.For(null, (int)s_untilTaken.TotalMilliseconds);
            if (happened.HasFlag(InputEvent.Readable))
            {
                KeepGoing(arrived);
            }
            else if (happened.HasFlag(InputEvent.HungUp))
            {
                gone();
                return;
            }
        }
    }

    // The library takes it at its next look; what it made of it is handled in the round after.
    private void KeepGoing(Action arrived)
    {
        for (int rounds = 0; rounds * RoundMilliseconds <= s_untilTaken.TotalMilliseconds && !_stop.IsCancellationRequested; rounds++)
        {
            arrived();
            _stop.Token.WaitHandle.WaitOne(RoundMilliseconds);
        }
    }
}
