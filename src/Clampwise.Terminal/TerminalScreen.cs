using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Views;
using LineStyle = Terminal.Gui.Drawing.LineStyle;

namespace Clampwise.Terminal;

/// <summary>The whole screen as the library runs it: hands over its keys and its quarter seconds, and draws what it is given.</summary>
internal sealed class TerminalScreen : Runnable, IScreen
{
    private static readonly TimeSpan s_tick = TimeSpan.FromMilliseconds(250);
    private readonly IScreenContent _content;
    private readonly Canvas _canvas;
    private object? _timer;

    /// <summary>The screen with its content on it.</summary>
    public TerminalScreen(IScreenContent content)
    {
        _content = content;
        _canvas = new Canvas(content.Compose);
        BorderStyle = LineStyle.None;
        // Of the terminal's window.
        Title = "Clampwise";
        Add(_canvas);
        content.Appear(this);
    }

    /// <inheritdoc/>
    public void Redraw() => _canvas.SetNeedsDraw();

    /// <inheritdoc/>
    public void Renew()
    {
        UseColours(App?.Driver);
        // The same colour may be sent otherwise now.
        App?.Driver?.ClearContents();
        Redraw();
    }

    /// <inheritdoc/>
    public void Post(Action action) => App?.Invoke(() =>
    {
        action();
        Redraw();
    });

    /// <inheritdoc/>
    public void Copy(string text) => App?.Driver?.WriteRaw(TerminalModes.Copy(text));

    /// <inheritdoc/>
    public void End() => RequestStop();

    /// <summary>Tells the terminal's driver which colours to send: left alone it guesses by other signs.</summary>
    public void UseColours(IDriver? driver) => driver?.Force16Colors = _content.IsInSixteen;

    /// <inheritdoc/>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning)
        {
            _timer = App?.AddTimeout(s_tick, Tick);
        }
        else if (_timer is not null)
        {
            App?.RemoveTimeout(_timer);
            _timer = null;
        }
    }

    // Every key is ours: an arrow must not move the focus, nor Esc end the program.
    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        _content.Press(LibraryKeys.Read(key));
        Redraw();
        return true;
    }

    private bool Tick()
    {
        if (_content.Tick())
        {
            Redraw();
        }

        return true;
    }
}
