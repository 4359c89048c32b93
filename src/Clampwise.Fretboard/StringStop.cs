namespace Clampwise.Fretboard;

/// <summary>What is done with one string of a fretting: muted (the default), left to ring from its ground, or a finger at a fret.</summary>
public readonly record struct StringStop
{
    private const int FirstFinger = 2;
    private readonly byte _code;

    private StringStop(int code) => _code = (byte)code;

    /// <summary>Not sounded.</summary>
    public static StringStop Muted => default;

    /// <summary>Sounded with no finger.</summary>
    public static StringStop Ringing => new(1);

    /// <summary>A small number for each stop: 0 muted, 1 ringing, fret + 2 for a finger at fret 0 or above.</summary>
    internal int Code => _code;

    /// <summary>True if the string is not sounded.</summary>
    public bool IsMuted => _code == 0;

    /// <summary>True if the string sounds with no finger on it.</summary>
    public bool IsRinging => _code == 1;

    /// <summary>True if a finger stops the string.</summary>
    public bool IsFretted => _code >= FirstFinger;

    /// <summary>The finger's fret from the nut; null without a finger.</summary>
    public Fret? Finger => IsFretted ? Fret.Of(_code - FirstFinger) : null;

    /// <summary>A finger at a fret from the nut, 1 to 24. Throws for the nut itself.</summary>
    public static StringStop At(Fret fret) => fret > Fret.Nut
        ? new StringStop(CodeOf(fret.Number))
        : throw new ArgumentOutOfRangeException(nameof(fret), fret, "A finger stops a string at fret 1 or above.");

    /// <summary>The code of a finger at a fret.</summary>
    internal static int CodeOf(int fret) => fret + FirstFinger;

    /// <summary>The fret of a finger's code.</summary>
    internal static int FretOf(int code) => code - FirstFinger;

    internal static StringStop FromCode(int code) => new(code);

    /// <inheritdoc/>
    public override string ToString() => IsMuted ? "x" : Finger?.ToString() ?? "0";
}
