using System.Runtime.CompilerServices;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Screens;
using Clampwise.Terminal;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Time;

namespace Clampwise.Tests.Screens;

/// <summary>A frame in a terminal of a given size that exists only in memory: keys go in, the screen comes out as text.</summary>
internal sealed class TestTerminal : IDisposable
{
    private readonly IApplication _app;
    private readonly TerminalScreen _screen;
    private readonly SessionToken _session;

    public TestTerminal(int columns, int rows, Theme? theme = null, GlyphSet? glyphs = null)
    {
        Glyphs = glyphs ?? GlyphSet.Unicode;
        Frame = new Frame(theme ?? Theme.Plain, Glyphs);
        _screen = new TerminalScreen(Frame);
        _app = global::Terminal.Gui.App.Application.Create(new VirtualTimeProvider());
        _app.Init("ansi");
        TerminalHost.UseOwnGround();
        _app.Driver!.SetScreenSize(columns, rows);
        _session = _app.Begin(_screen)!;
    }

    public Frame Frame { get; }

    public GlyphSet Glyphs { get; }

    /// <summary>The screen as text, without the spaces at the ends of its lines.</summary>
    public string Screen
    {
        get
        {
            _app.LayoutAndDraw();
            return string.Join('\n', _app.Driver!.ToString()!.Split('\n').Select(line => line.TrimEnd())).TrimEnd() + "\n";
        }
    }

    /// <summary>What drawing sends to the terminal now.</summary>
    public string Sent
    {
        get
        {
            _app.LayoutAndDraw();
            return _app.Driver!.GetOutput().GetLastOutput();
        }
    }

    /// <summary>The screen with its colours as escape sequences.</summary>
    public string Colours
    {
        get
        {
            _app.LayoutAndDraw();
            return _app.Driver!.ToAnsi();
        }
    }

    /// <summary>The tone of every cell of the screen, as a letter of <see cref="ToneLetters"/>; of two tones that look the same the first.</summary>
    public string Tones(Theme theme)
    {
        _app.LayoutAndDraw();
        Cell[,] cells = _app.Driver!.Contents!;
        IEnumerable<string> rows = Enumerable.Range(0, cells.GetLength(0)).Select(row => string.Concat(
            Enumerable.Range(0, cells.GetLength(1)).Select(column => LetterOf(cells[row, column], theme))).TrimEnd());
        return string.Join('\n', rows).TrimEnd() + "\n";
    }

    // In the order of Tone; plain is blank.
    private static readonly LibraryColours s_colours = new();
    private const string ToneLetters = " SqkRWHFfomC";

    private static char LetterOf(Cell cell, Theme theme)
    {
        Tone? tone = Enum.GetValues<Tone>().Cast<Tone?>().FirstOrDefault(tone => s_colours[theme[tone!.Value]] == cell.Attribute);
        bool isBlank = tone is Tone.Plain or Tone.Quiet or Tone.Strong or Tone.Key && string.IsNullOrWhiteSpace(cell.Grapheme);
        return isBlank ? ' ' : tone is { } known ? ToneLetters[(int)known] : '!';
    }

    [ModuleInitializer]
    internal static void KeepOffTheRealTerminal()
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        // The library looks at these itself, whatever the terminal of whoever runs the tests.
        Environment.SetEnvironmentVariable("NO_COLOR", null);
        Environment.SetEnvironmentVariable("TERM", "xterm-256color");
    }

    public TestTerminal Press(params KeyPress[] keys)
    {
        foreach (KeyPress key in keys)
        {
            _app.GetInputInjector().InjectKey(LibraryKeys.Write(key));
        }

        return this;
    }

    public TestTerminal Type(string text) => Press([.. text.Select(sign => KeyPress.Of(sign))]);

    public TestTerminal Resize(int columns, int rows)
    {
        _app.Driver!.SetScreenSize(columns, rows);
        return this;
    }

    public void Dispose()
    {
        _app.End(_session);
        _app.Dispose();
    }
}
