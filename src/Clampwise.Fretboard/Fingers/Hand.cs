using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// A player's fretting hand. Its span is the farthest that fingers 1 and 4 reach apart along the neck; the other pairs reach a part
/// of it. The three sizes are our judgement from 2,025 ordinary chord positions, of which 90 % reach at most 77 mm and 99 % at most
/// 97 mm at a scale of 648 mm; that span along the neck limits a fingering follows Heijink and Meulenbroek 2002.
/// </summary>
public sealed record Hand
{
    /// <summary>The smallest span in millimetres: a child's hand.</summary>
    public const double NarrowestMillimetres = 50.0;

    /// <summary>The widest span in millimetres.</summary>
    public const double WidestMillimetres = 180.0;

    // What a pair of fingers reaches, as a part of what 1 and 4 reach: rows and columns 1 to 4, then T. Our judgement, and no tighter
    // than lets a medium hand finger every position of that set: two frets between neighbours from the first fret, three for 1 and 3.
    private static readonly double[,] s_parts =
    {
        { 0.00, 0.70, 0.93, 1.00, 0.80 },
        { 0.70, 0.00, 0.65, 0.85, 0.80 },
        { 0.93, 0.65, 0.00, 0.62, 0.80 },
        { 1.00, 0.85, 0.62, 0.00, 0.80 },
        { 0.80, 0.80, 0.80, 0.80, 0.00 },
    };

    private Hand(double spanMillimetres) => SpanMillimetres = spanMillimetres;

    /// <summary>A small hand: 90 mm.</summary>
    public static Hand Small { get; } = new(90.0);

    /// <summary>A medium hand: 105 mm.</summary>
    public static Hand Medium { get; } = new(105.0);

    /// <summary>A large hand: 120 mm.</summary>
    public static Hand Large { get; } = new(120.0);

    /// <summary>The farthest that fingers 1 and 4 reach apart along the neck.</summary>
    public double SpanMillimetres { get; }

    /// <summary>True if the thumb may stop the lowest string. It is off unless the player asks for it.</summary>
    public bool UsesThumb { get; init; }

    /// <summary>True if the left hand plucks. It turns pictures round and changes no limit: the fretting hand reaches the same.</summary>
    public bool IsLeftHanded { get; init; }

    /// <summary>A hand of a given span; refused outside 50 to 180 mm.</summary>
    public static Result<Hand> OfSpan(double millimetres) => millimetres is >= NarrowestMillimetres and <= WidestMillimetres
        ? new Hand(millimetres)
        : FretboardWords.HandSpanOutOfRange(millimetres);

    /// <summary>Reads <c>small</c>, <c>medium</c>, <c>large</c> or a span such as <c>98 mm</c>.</summary>
    public static Result<Hand> Parse(string text)
    {
        string word = text.Trim();
        string number = word.EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? word[..^2].TrimEnd() : word;
        return word.ToUpperInvariant() switch
        {
            "SMALL" => Small,
            "MEDIUM" => Medium,
            "LARGE" => Large,
            _ when double.TryParse(number, System.Globalization.NumberStyles.AllowDecimalPoint, null, out double span) => OfSpan(span),
            _ => FretboardWords.ExpectedHand(text),
        };
    }

    /// <summary>The farthest that two fingers reach apart along the neck, in millimetres.</summary>
    public double SpreadMillimetres(Finger one, Finger other) => SpanMillimetres * PartOfSpan(one, other);

    internal static double PartOfSpan(Finger one, Finger other) => s_parts[(int)one - 1, (int)other - 1];
}
