namespace Clampwise.Theory;

/// <summary>Which seventh a chord holds.</summary>
public enum SeventhKind
{
    /// <summary>No seventh.</summary>
    None,

    /// <summary>The minor seventh, b7.</summary>
    Minor,

    /// <summary>The major seventh, 7.</summary>
    Major,

    /// <summary>The diminished seventh, bb7.</summary>
    Diminished,
}
