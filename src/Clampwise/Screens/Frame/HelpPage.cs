using Clampwise.Application;
using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>Help on the page beneath it, the keys that work there, and the cautions.</summary>
/// <param name="frame">The frame.</param>
/// <param name="about">The page.</param>
/// <param name="keys">Its keys, as it was left: behind another page it may be paused.</param>
internal sealed class HelpPage(Frame frame, Page about, IReadOnlyList<PageKey> keys) : Page
{
    private int _top;

    public override string Title => $"help: {about.Title}";

    public override IReadOnlyList<PageKey> Keys =>
        [PageKey.On(KeyPress.Esc, "back", frame.Close) with { TakesAny = true }, PageKey.Scroll(by => _top += by)];

    public override IReadOnlyList<string> Help => about.Help;

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        List<Line> all = [];
        foreach (string paragraph in about.Help)
        {
            all.AddRange(Line.Wrap(paragraph, width - 4).Select(line => line.Indent(2)));
            all.Add(Line.Empty);
        }

        all.Add(Line.Of("  Keys", Tone.Strong));
        all.AddRange(KeyLines(width - 4).Select(line => line.Indent(2)));
        all.Add(Line.Empty);
        all.Add(Line.Of("  Hands, ears, strings", Tone.Strong));
        foreach (string caution in Cautions.All)
        {
            all.AddRange(Line.Wrap(caution, width - 4, Tone.Quiet).Select(line => line.Indent(2)));
        }

        _top = Math.Clamp(_top, 0, Math.Max(0, all.Count - height));
        return [.. all.Skip(_top)];
    }

    // As many on a line as there is room for.
    private List<Line> KeyLines(int width)
    {
        List<Line> lines = [];
        Line line = Line.Empty;
        foreach (PageKey key in keys)
        {
            Line next = Line.Of(key.Names, Tone.Key).And($" {key.Does}   ", Tone.Quiet);
            if (line.Width > 0 && line.Width + next.Width > width)
            {
                lines.Add(line);
                line = Line.Empty;
            }

            line = line.And(next);
        }

        return [.. lines, line];
    }
}
