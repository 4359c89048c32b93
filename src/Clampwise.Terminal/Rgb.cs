namespace Clampwise.Terminal;

/// <summary>An exact colour (sRGB), 0 to 255 for each part.</summary>
public readonly record struct Rgb(byte Red, byte Green, byte Blue)
{
    /// <summary>The colour of a number written 0xrrggbb; what lies above is not looked at.</summary>
    public static Rgb Of(int number) => new((byte)(number >> 16), (byte)(number >> 8), (byte)number);

    /// <summary>Such as <c>#d9483b</c>.</summary>
    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";
}
