using Clampwise.Look;
using Terminal.Gui.ViewBase;

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

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        (int width, int height) = (Viewport.Width, Viewport.Height);
        IReadOnlyList<Line> lines = _lines(width, height);
        for (int row = 0; row < height; row++)
        {
            int column = 0;
            foreach (Run run in row < lines.Count ? lines[row].Runs : [])
            {
                string text = run.Text.Length > width - column ? run.Text[..Math.Max(0, width - column)] : run.Text;
                SetAttribute(Theme[run.Tone]);
                AddStr(column, row, text);
                column += text.Length;
            }

            SetAttribute(Theme[Tone.Plain]);
            AddStr(column, row, new string(' ', Math.Max(0, width - column)));
        }

        return true;
    }
}
