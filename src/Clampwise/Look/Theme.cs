using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Clampwise.Look;

/// <summary>Turns tones into what the terminal shows. The ground is the terminal's own, so that light and dark ones both work.</summary>
internal sealed class Theme
{
    private readonly Func<Tone, Attribute> _attributes;

    private Theme(Func<Tone, Attribute> attributes) => _attributes = attributes;

    /// <summary>Colours of middling lightness, each also told apart by its glyph.</summary>
    public static Theme Colour { get; } = new(InColour);

    /// <summary>No colour at all: bold, underline and reverse.</summary>
    public static Theme Plain { get; } = new(WithoutColour);

    /// <summary>Without colour if NO_COLOR is set and not empty (the convention of that name) or the terminal is a dumb one.</summary>
    public static Theme For(Func<string, string?> variable) =>
        !string.IsNullOrEmpty(variable("NO_COLOR")) || variable("TERM") == "dumb" ? Plain : Colour;

    /// <summary>The look of a tone.</summary>
    public Attribute this[Tone tone] => _attributes(tone);

    private static Attribute InColour(Tone tone) => tone switch
    {
        Tone.Strong => Of(Color.None, TextStyle.Bold),
        Tone.Quiet => Of(new Color(128, 128, 128)),
        Tone.Key => Of(new Color(44, 130, 170), TextStyle.Bold),
        Tone.Right => Of(new Color(60, 150, 70), TextStyle.Bold),
        Tone.Wrong => Of(new Color(205, 80, 60), TextStyle.Bold),
        Tone.Held => Of(new Color(190, 120, 20), TextStyle.Bold),
        Tone.Free => Of(new Color(60, 150, 70), TextStyle.Bold),
        Tone.Finger => Of(new Color(44, 130, 170), TextStyle.Bold),
        Tone.Muted => Of(new Color(128, 128, 128)),
        Tone.Cursor => Of(Color.None, TextStyle.Reverse | TextStyle.Bold),
        _ => Of(Color.None),
    };

    private static Attribute WithoutColour(Tone tone) => tone switch
    {
        Tone.Strong or Tone.Key or Tone.Right or Tone.Finger or Tone.Held => Of(Color.None, TextStyle.Bold),
        Tone.Wrong => Of(Color.None, TextStyle.Underline | TextStyle.Bold),
        Tone.Cursor => Of(Color.None, TextStyle.Reverse),
        _ => Of(Color.None),
    };

    private static Attribute Of(Color foreground, TextStyle style = TextStyle.None) => new(foreground, Color.None, style);
}
