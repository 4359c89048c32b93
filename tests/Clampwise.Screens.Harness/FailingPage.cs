using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Screens.Harness;

/// <summary>A page that fails in the ways that a program can.</summary>
internal sealed class FailingPage(Shell shell) : Page
{
    private bool _failsInDrawing;
    private bool _failsInTick;

    public override string Title => "failing";

    public override IReadOnlyList<(string Key, string Does)> Keys { get; } = [("Esc", "back"), ("?", "help")];

    public override IReadOnlyList<string> Help { get; } = ["k fails in a key, d in drawing, t in a tick, p in work posted to the screen, o on another thread."];

    public override IReadOnlyList<Line> Draw(int width, int height) => _failsInDrawing ? throw Failure("drawing") : [Line.Of("Waiting to fail.")];

    public override bool Tick() => _failsInTick ? throw Failure("tick") : false;

    public override bool Press(KeyPress key)
    {
        switch (key.Sign)
        {
            case 'k':
                throw Failure("key");
            case 'd':
                _failsInDrawing = true;
                break;
            case 't':
                _failsInTick = true;
                break;
            case 'p':
                new Thread(() => shell.Post(() => throw Failure("posted"))).Start();
                break;
            case 'o':
                new Thread(() => throw Failure("other thread")).Start();
                break;
            default:
                shell.Close();
                break;
        }

        return true;
    }

    private static InvalidOperationException Failure(string where) => new($"made to fail: {where}");
}
