namespace Clampwise.Charts;

/// <summary>How large dots are drawn.</summary>
internal enum DotSize
{
    /// <summary>A character, or a sign alone.</summary>
    Bare,

    /// <summary>In round brackets.</summary>
    Bracketed,

    /// <summary>Three rows high.</summary>
    Large,
}
