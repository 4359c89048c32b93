namespace Clampwise.Settings;

/// <summary>Which characters drawings are made of.</summary>
internal enum GlyphChoice
{
    /// <summary>What the locale can show.</summary>
    Auto,

    /// <summary>Lines, blocks and circles, whatever the locale says.</summary>
    Unicode,

    /// <summary>Only ASCII.</summary>
    Ascii,
}
