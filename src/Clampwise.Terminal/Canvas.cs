using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;
using Point = System.Drawing.Point;

namespace Clampwise.Terminal;

/// <summary>Puts rows of styled text onto the terminal.</summary>
internal sealed class Canvas : View
{
    private readonly Func<int, int, IReadOnlyList<IReadOnlyList<StyledText>>> _rows;
    private readonly LibraryColours _colours = new();

    /// <summary>A canvas that asks for its rows, given columns and rows, whenever it must be drawn.</summary>
    public Canvas(Func<int, int, IReadOnlyList<IReadOnlyList<StyledText>>> rows)
    {
        _rows = rows;
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = false;
    }

    // Every row is written in full: clearing first would send the whole screen to the terminal again.
    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        (int width, int height) = (Viewport.Width, Viewport.Height);
        IReadOnlyList<IReadOnlyList<StyledText>> rows = _rows(width, height);
        for (int row = 0; row < Math.Min(height, rows.Count); row++)
        {
            if (!IsShown(rows[row], row))
            {
                Write(rows[row], row);
            }
        }

        return true;
    }

    // A row at a time: between changed cells the library moves the cursor over each one that has not changed.
    private void Write(IReadOnlyList<StyledText> pieces, int row)
    {
        int column = 0;
        foreach (StyledText piece in pieces)
        {
            SetAttribute(_colours[piece.Style]);
            AddStr(column, row, piece.Text);
            column += Columns.Of(piece.Text);
        }
    }

    // The driver's own cells are asked, so that whatever clears them, such as a new size, has all rows written again.
    private bool IsShown(IReadOnlyList<StyledText> pieces, int row)
    {
        if (App?.Driver?.Contents is not { } cells || pieces.Any(piece => !Columns.IsOneEach(piece.Text)))
        {
            return false;
        }

        Point start = ViewportToScreen(new Point(0, row));
        if (start.Y >= cells.GetLength(0) || start.X + pieces.Sum(piece => piece.Text.Length) > cells.GetLength(1))
        {
            return false;
        }

        int column = start.X;
        foreach (StyledText piece in pieces)
        {
            Attribute attribute = _colours[piece.Style];
            foreach (char sign in piece.Text)
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
