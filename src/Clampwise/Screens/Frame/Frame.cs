using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>The frame around all pages: title line, page, key line; the pages lie on a pile, the last one in front.</summary>
internal sealed class Frame : IScreenContent
{
    /// <summary>Below this the frame says that there is too little room.</summary>
    public const int NarrowestWidth = 60;

    /// <summary>Below this the frame says that there is too little room.</summary>
    public const int LowestHeight = 20;

    private const int WidestPage = 200;
    private const int SideMargin = 1;
    private GlyphSet _glyphs;
    private Theme _theme;
    private readonly Stack<Page> _pages = new();
    private IScreen? _screen;
    private string? _said;

    /// <summary>A frame with nothing in it yet.</summary>
    public Frame(Theme theme, GlyphSet glyphs)
    {
        _theme = theme;
        _glyphs = glyphs;
    }

    /// <inheritdoc/>
    public bool IsInSixteen => _theme.Depth == ColourDepth.Sixteen;

    /// <summary>Changes how everything looks.</summary>
    public void Wear(Theme theme, GlyphSet glyphs)
    {
        _glyphs = glyphs;
        _theme = theme;
        _screen?.Renew();
    }

    /// <summary>True once the last page has gone.</summary>
    public bool IsEmpty => _pages.Count == 0;

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
        _screen?.Redraw();
    }

    /// <summary>Takes the page in front away; with the last one the program ends.</summary>
    public void Close()
    {
        _pages.Pop().Leave();
        if (IsEmpty)
        {
            _screen?.End();
            return;
        }

        Front.Attend(true);
        _screen?.Redraw();
    }

    /// <summary>Puts another page in the place of the one in front.</summary>
    public void Replace(Page page)
    {
        _pages.Pop().Leave();
        _pages.Push(page);
        page.Enter();
        _screen?.Redraw();
    }

    /// <summary>Lets every page go, so that nothing plays on and every session is put down.</summary>
    public void CloseAll()
    {
        while (_pages.TryPop(out Page? page))
        {
            page.Leave();
        }

        _screen?.End();
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
    public void Post(Action action) => _screen?.Post(action);

    /// <inheritdoc/>
    public void Appear(IScreen screen) => _screen = screen;

    /// <inheritdoc/>
    public void Press(KeyPress key)
    {
        if (IsEmpty)
        {
            return;
        }

        if (key == KeyPress.Of('c').WithCtrl)
        {
            CloseAll();
            return;
        }

        _said = null;
        if (FrameKeys.FirstOrDefault(own => own.Takes(key)) is { } frameKey)
        {
            frameKey.Act(key);
        }
        else
        {
            Front.Press(key);
        }
    }

    /// <inheritdoc/>
    public bool Tick() => !IsEmpty && Front.Tick();

    /// <inheritdoc/>
    public IReadOnlyList<IReadOnlyList<StyledText>> Compose(int columns, int rows)
    {
        List<Line> lines = Lines(columns, rows);
        return [.. Enumerable.Range(0, rows).Select(row => Styled((row < lines.Count ? lines[row] : Line.Empty).Take(columns).PadTo(columns)))];
    }

    private StyledText[] Styled(Line line) => [.. line.Runs.Select(run => new StyledText(run.Text, _theme[run.Tone]))];

    private List<Line> Lines(int width, int height)
    {
        if (IsEmpty)
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
        lines.Add(_said is null ? KeyLine(column) : Line.Of($" {_said}", Tone.Strong).Cut(column, _glyphs.More));
        return [.. lines.Select(line => line.Indent(margin))];
    }

    // As it stands on a command line; whether the terminal took it, it does not say.
    private void Copy(Voicing voicing)
    {
        string text = $"'{voicing.Setup}' {voicing.Fretting}";
        _screen?.Copy(text);
        _said = $"Handed to the terminal's clipboard: {text}";
    }

    /// <summary>All keys that work now: the front page's, then the frame's own.</summary>
    public IReadOnlyList<PageKey> Keys => [.. Front.Keys, .. FrameKeys];

    // Every page has help, but help itself; a page with a voicing to copy has F9. While a text is typed, ? belongs to it.
    private IEnumerable<PageKey> FrameKeys
    {
        get
        {
            if (Front.Copied is { } voicing)
            {
                yield return PageKey.On(KeyPress.F(9), "copy", () => Copy(voicing));
            }

            if (Front is not HelpPage)
            {
                PageKey help = PageKey.On(KeyPress.F(1), "help", OpenHelp);
                yield return Front.IsTyping ? help : help.Or(KeyPress.Of('?')) with { Label = "?" };
            }
        }
    }

    private void OpenHelp() => Open(new HelpPage(this, Front, Keys));

    // Keys that must be seen however narrow the screen is: back, pause and help.
    private static bool IsWayOut(PageKey key) => key.Label is "Esc" or "?" or "F1";

    private static Line KeyWords(PageKey key) => Line.Of(key.Label, Tone.Key).And($" {key.Does}  ", Tone.Quiet);

    private Line TitleLine(int width)
    {
        Line left = Line.Of(new Run(" Clampwise", Tone.Strong), new Run($"  {Front.Title}", Tone.Plain));
        string corner = $"{Front.Corner} ";
        return left.Cut(width - corner.Length - 1, _glyphs.More).PadTo(width - corner.Length).And(corner, Tone.Strong);
    }

    private Line KeyLine(int width)
    {
        PageKey[] keys = [.. Keys.Where(key => key.IsOnLine)];
        Line[] ways = [.. keys.Where(IsWayOut).Select(KeyWords)];
        Line line = Line.Of(" ");
        foreach (Line next in keys.Where(key => !IsWayOut(key)).Select(KeyWords))
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
