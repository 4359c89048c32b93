namespace Clampwise.Charts;

/// <summary>A grid of characters to draw on; what lies outside of it is cut off.</summary>
internal sealed class Sheet
{
    private readonly char[,] _signs;
    private readonly Mark[,] _tones;

    /// <summary>A sheet of spaces.</summary>
    public Sheet(int width, int height)
    {
        (_signs, _tones) = (new char[height, width], new Mark[height, width]);
        for (int row = 0; row < height; row++)
        {
            for (int column = 0; column < width; column++)
            {
                _signs[row, column] = ' ';
            }
        }
    }

    /// <summary>Columns.</summary>
    public int Width => _signs.GetLength(1);

    /// <summary>Rows.</summary>
    public int Height => _signs.GetLength(0);

    /// <summary>Every row as a line.</summary>
    public IReadOnlyList<MarkedLine> Lines => [.. Enumerable.Range(0, Height).Select(RowLine)];

    /// <summary>Writes a text over what is there.</summary>
    public void Put(int column, int row, string text, Mark mark)
    {
        for (int i = 0; i < text.Length; i++)
        {
            Put(column + i, row, text[i], mark);
        }
    }

    /// <summary>Writes a character over what is there.</summary>
    public void Put(int column, int row, char sign, Mark mark)
    {
        if (IsInside(column, row))
        {
            (_signs[row, column], _tones[row, column]) = (sign, mark);
        }
    }

    /// <summary>Gives characters another mark.</summary>
    public void Paint(int column, int row, int count, Mark mark)
    {
        for (int i = column; i < column + count; i++)
        {
            if (IsInside(i, row))
            {
                _tones[row, i] = mark;
            }
        }
    }

    private bool IsInside(int column, int row) => row >= 0 && row < Height && column >= 0 && column < Width;

    private MarkedLine RowLine(int row)
    {
        var runs = new List<MarkedText>();
        int start = 0;
        for (int column = 1; column <= Width; column++)
        {
            if (column == Width || _tones[row, column] != _tones[row, start])
            {
                runs.Add(new MarkedText(string.Create(column - start, (this, row, start), Fill), _tones[row, start]));
                start = column;
            }
        }

        return MarkedLine.Of([.. runs]);
    }

    private static void Fill(Span<char> span, (Sheet Sheet, int Row, int Start) from)
    {
        for (int i = 0; i < span.Length; i++)
        {
            span[i] = from.Sheet._signs[from.Row, from.Start + i];
        }
    }
}
