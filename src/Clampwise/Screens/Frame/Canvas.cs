using Clampwise.Look;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;
using Line = Clampwise.Look.Line;

namespace Clampwise.Screens;

/// <summary>Puts the lines of the page in front onto the terminal.</summary>
internal sealed class Canvas : View
{
    private readonly Func<int, int, IReadOnlyList<Line>> _lines;

    /// <summary>A canvas that asks for its lines, given columns and rows, whenever it must be drawn.</summary>
    public Canvas(Theme theme, Func<int, int, IReadOnlyList<Line>> lines)
    {
        Theme = theme;
        _lines = lines;
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = false;
    }

    /// <summary>How tones look.</summary>
    public Theme Theme { get; set; }

    // Every row is written in full: clearing first would send the whole screen to the terminal again.
    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        (int width, int height) = (Viewport.Width, Viewport.Height);
        IReadOnlyList<Line> lines = _lines(width, height);
        for (int row = 0; row < height; row++)
        {
            Line line = (row < lines.Count ? lines[row] : Line.Empty).Take(width).PadTo(width);
            if (!IsShown(line, row))
            {
                Write(line, row);
            }
        }

        return true;
    }

    // A row at a time: between changed cells the library moves the cursor over each one that has not changed.
    private void Write(Line line, int row)
    {
        int column = 0;
        foreach (Run run in line.Runs)
        {
            SetAttribute(Theme[run.Tone]);
            AddStr(column, row, run.Text);
            column += run.Text.Length;
        }
    }

    // The driver's own cells are asked, so that whatever clears them, such as a new size, has all rows written again.
    private bool IsShown(Line line, int row)
    {
        if (App?.Driver?.Contents is not { } cells)
        {
            return false;
        }

        System.Drawing.Point start = ViewportToScreen(new System.Drawing.Point(0, row));
        if (start.Y >= cells.GetLength(0) || start.X + line.Width > cells.GetLength(1))
        {
            return false;
        }

        int column = start.X;
        foreach (Run run in line.Runs)
        {
            Attribute attribute = Theme[run.Tone];
            foreach (char sign in run.Text)
            {
                Cell cell = cells[start.Y, column++];
                if (cell.Attribute != attribute || cell.Grapheme is not [var shown] || shown != sign)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
