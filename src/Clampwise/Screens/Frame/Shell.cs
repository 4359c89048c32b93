using Clampwise.Look;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Views;
using Line = Clampwise.Look.Line;

namespace Clampwise.Screens;

/// <summary>The frame around all pages: title line, page, key line; the pages lie on a pile, the last one in front.</summary>
internal sealed class Shell : Runnable
{
    /// <summary>Below this the frame says that there is too little room.</summary>
    public const int NarrowestWidth = 60;

    /// <summary>Below this the frame says that there is too little room.</summary>
    public const int LowestHeight = 20;

    private const int WidestPage = 200;
    private const int SideMargin = 1;
    private static readonly TimeSpan s_tick = TimeSpan.FromMilliseconds(250);
    private GlyphSet _glyphs;
    private readonly Canvas _canvas;
    private readonly Stack<Page> _pages = new();
    private object? _timer;

    /// <summary>A frame with nothing in it yet.</summary>
    public Shell(Theme theme, GlyphSet glyphs)
    {
        _glyphs = glyphs;
        _canvas = new Canvas(theme, Compose);
        BorderStyle = Terminal.Gui.Drawing.LineStyle.None;
        // Of the terminal's window.
        Title = "Clampwise";
        Add(_canvas);
    }

    /// <summary>Changes how everything looks.</summary>
    public void Wear(Theme theme, GlyphSet glyphs)
    {
        _glyphs = glyphs;
        _canvas.Theme = theme;
        UseColours(App?.Driver);
        // The same colour may be sent otherwise now.
        App?.Driver?.ClearContents();
        _canvas.SetNeedsDraw();
    }

    /// <summary>Tells the terminal's driver which colours to send: left alone it guesses by other signs.</summary>
    public void UseColours(IDriver? driver) => driver?.Force16Colors = _canvas.Theme.Depth == ColourDepth.Sixteen;

    /// <summary>The page in front.</summary>
    public Page Front => _pages.Peek();

    /// <summary>Puts a page in front.</summary>
    public void Open(Page page)
    {
        if (_pages.TryPeek(out Page? beneath))
        {
            beneath.Attend(false);
        }

        _pages.Push(page);
        page.Enter();
        _canvas.SetNeedsDraw();
    }

    /// <summary>Takes the page in front away; with the last one the program ends.</summary>
    public void Close()
    {
        _pages.Pop().Leave();
        if (_pages.Count == 0)
        {
            RequestStop();
            return;
        }

        Front.Attend(true);
        _canvas.SetNeedsDraw();
    }

    /// <summary>Puts another page in the place of the one in front.</summary>
    public void Replace(Page page)
    {
        _pages.Pop().Leave();
        _pages.Push(page);
        page.Enter();
        _canvas.SetNeedsDraw();
    }

    /// <summary>Lets every page go, so that nothing plays on and every session is put down.</summary>
    public void CloseAll()
    {
        while (_pages.TryPop(out Page? page))
        {
            page.Leave();
        }

        RequestStop();
    }

    /// <summary>The terminal's window lost or regained the player's attention.</summary>
    public void Attend(bool isAttending)
    {
        if (_pages.TryPeek(out Page? front))
        {
            front.Attend(isAttending);
        }
    }

    /// <summary>Does something on the thread of the screen, whichever thread asks for it, and draws anew.</summary>
    public void Post(Action action) => App?.Invoke(() =>
    {
        action();
        _canvas.SetNeedsDraw();
    });

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

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (_pages.Count == 0)
        {
            return true;
        }

        if (key == Key.C.WithCtrl)
        {
            CloseAll();
            return true;
        }

        bool asksForHelp = key == Key.F1 || (key.AsRune.Value == '?' && !Front.IsTyping);
        if (asksForHelp && Front is not HelpPage)
        {
            Open(new HelpPage(this, Front));
        }
        else
        {
            Front.Press(key);
        }

        _canvas.SetNeedsDraw();
        // Every key is ours: an arrow must not move the focus, nor Esc end the program.
        return true;
    }

    private bool Tick()
    {
        if (_pages.Count > 0 && Front.Tick())
        {
            _canvas.SetNeedsDraw();
        }

        return true;
    }

    private List<Line> Compose(int width, int height)
    {
        if (_pages.Count == 0)
        {
            return [];
        }

        if (width < NarrowestWidth || height < LowestHeight)
        {
            return [Line.Of($"{width}x{height} is too small."), Line.Of($"Clampwise needs {NarrowestWidth}x{LowestHeight}."), Line.Of("Make the window larger."), Line.Of("Nothing is lost.")];
        }

        int column = Math.Min(width, WidestPage);
        int margin = (width - column) / 2;
        int rows = height - 3;
        var lines = new List<Line> { TitleLine(column), Line.Of(new string(_glyphs.Rule, column), Tone.Quiet) };
        lines.AddRange(Front.Draw(column - (2 * SideMargin), rows).Take(rows).Select(line => line.Cut(column - (2 * SideMargin), _glyphs.More).Indent(SideMargin)));
        lines.AddRange(Enumerable.Repeat(Line.Empty, height - 1 - lines.Count));
        lines.Add(KeyLine(column));
        return [.. lines.Select(line => line.Indent(margin))];
    }

    // Keys that must be seen however narrow the screen is: back, pause and help.
    private static bool IsWayOut((string Key, string Does) key) => key.Key is "Esc" or "?" or "F1";

    // Every page has help, whether it says so or not; help itself has none, and any key but the cursor's leads back.
    private (string Key, string Does) HelpKey => Front is HelpPage ? ("", "") : (Front.IsTyping ? "F1" : "?", "help");

    private static Line KeyWords((string Key, string Does) key) => Line.Of(key.Key, Tone.Key).And($" {key.Does}  ", Tone.Quiet);

    private Line TitleLine(int width)
    {
        Line left = Line.Of(new Run(" Clampwise", Tone.Strong), new Run($"  {Front.Title}", Tone.Plain));
        string corner = $"{Front.Corner} ";
        return left.Cut(width - corner.Length - 1, _glyphs.More).PadTo(width - corner.Length).And(corner, Tone.Strong);
    }

    private Line KeyLine(int width)
    {
        Line[] ways = [.. Front.Keys.Append(HelpKey).Where(IsWayOut).DistinctBy(key => key.Does).Select(KeyWords)];
        Line line = Line.Of(" ");
        foreach (Line next in Front.Keys.Where(key => !IsWayOut(key)).Select(KeyWords))
        {
            if (line.Width + next.Width + ways.Sum(way => way.Width) - 2 > width)
            {
                break;
            }

            line = line.And(next);
        }

        return ways.Aggregate(line, (whole, way) => whole.And(way));
    }
}
