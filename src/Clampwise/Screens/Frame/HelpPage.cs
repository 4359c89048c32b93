using Clampwise.Application;
using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>Help on the page beneath it, and the cautions.</summary>
internal sealed class HelpPage(Shell shell, Page about) : Page
{
    private int _top;

    public override string Title => $"help: {about.Title}";

    public override IReadOnlyList<(string Key, string Does)> Keys { get; } = [("Esc", "back"), ("Up Down", "scroll")];

    public override IReadOnlyList<string> Help => about.Help;

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        List<Line> all = [];
        foreach (string paragraph in about.Help)
        {
            all.AddRange(Line.Wrap(paragraph, width - 4).Select(line => line.Indent(2)));
            all.Add(Line.Empty);
        }

        all.Add(Line.Of("  Hands, ears, strings", Tone.Strong));
        foreach (string caution in Cautions.All)
        {
            all.AddRange(Line.Wrap(caution, width - 4, Tone.Quiet).Select(line => line.Indent(2)));
        }

        _top = Math.Clamp(_top, 0, Math.Max(0, all.Count - height));
        return [.. all.Skip(_top)];
    }

    public override bool Press(KeyPress key)
    {
        if (key == KeyPress.Down || key == KeyPress.Up || key == KeyPress.PageDown || key == KeyPress.PageUp)
        {
            _top += key == KeyPress.Down ? 1 : key == KeyPress.Up ? -1 : key == KeyPress.PageDown ? 10 : -10;
            return true;
        }

        shell.Close();
        return true;
    }
}
