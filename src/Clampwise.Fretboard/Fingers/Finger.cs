namespace Clampwise.Fretboard;

/// <summary>A finger of the fretting hand as chord diagrams number it. The default is no finger.</summary>
public enum Finger : byte
{
    /// <summary>No finger: the string rings or is muted.</summary>
    None,

    /// <summary>1.</summary>
    Index,

    /// <summary>2.</summary>
    Middle,

    /// <summary>3.</summary>
    Ring,

    /// <summary>4.</summary>
    Little,

    /// <summary>T, over the edge of the neck on the lowest string.</summary>
    Thumb,
}

/// <summary>How fingers are written.</summary>
public static class FingerText
{
    /// <summary>1 to 4 or T; empty for no finger.</summary>
    public static string Mark(this Finger finger) => finger switch
    {
        Finger.None => "",
        Finger.Thumb => "T",
        _ => ((int)finger).ToString(System.Globalization.CultureInfo.InvariantCulture),
    };

    /// <summary><c>finger 1</c> to <c>finger 4</c>, or <c>the thumb</c>.</summary>
    public static string InWords(this Finger finger) => finger == Finger.Thumb ? "the thumb" : $"finger {finger.Mark()}";
}
