using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Screens.Harness;

/// <summary>A page that fails in the ways that a program can.</summary>
internal sealed class FailingPage(Frame frame) : Page
{
    private bool _failsInDrawing;
    private bool _failsInTick;
    private int _heard;
    private KeyPress _last;

    public override string Title => "failing";

    public override IReadOnlyList<PageKey> Keys => [new PageKey("Esc", "back", [], Hear) { TakesAny = true }];

    public override IReadOnlyList<string> Help { get; } = ["k fails in a key, d in drawing, t in a tick, p in work posted to the screen, o on another thread; Esc goes back, any other key is shown."];

    public override IReadOnlyList<Line> Draw(int width, int height) => _failsInDrawing ? throw Failure("drawing") : [Line.Of(_heard == 0 ? "Waiting to fail." : $"heard {_heard}: {_last}.")];

    public override bool Tick() => _failsInTick ? throw Failure("tick") : false;

    private void Hear(KeyPress key)
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
                new Thread(() => frame.Post(() => throw Failure("posted"))).Start();
                break;
            case 'o':
                new Thread(() => throw Failure("other thread")).Start();
                break;
            default:
                (_heard, _last) = (_heard + 1, key);
                if (key == KeyPress.Esc)
                {
                    frame.Close();
                }

                break;
        }
    }

    private static InvalidOperationException Failure(string where) => new($"made to fail: {where}");
}
