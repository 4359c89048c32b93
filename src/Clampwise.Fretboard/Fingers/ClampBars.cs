namespace Clampwise.Fretboard;

/// <summary>
/// Over which strings clamps lie at each fret, counted from the lowest fretted one: no barre can lie across a clamp at the clamp's own
/// fret, whatever the hand does with the string beneath, because the clamp is in the way. What a higher clamp leaves idle of a lower
/// one is in the way too.
/// </summary>
internal sealed class ClampBars
{
    // One bit for each string, the lowest string lowest.
    private readonly int[] _bits;

    private ClampBars(int[] bits) => _bits = bits;

    /// <summary>No clamp in the way.</summary>
    public static ClampBars None { get; } = new([]);

    /// <summary>The clamps of a setup within so many frets from the lowest fretted one.</summary>
    public static ClampBars Of(Setup setup, int lowestFret, int frets)
    {
        var bits = new int[frets];
        foreach (Clamp clamp in setup.Clamps)
        {
            int offset = clamp.Fret.Number - lowestFret;
            if (offset >= 0 && offset < frets)
            {
                bits[offset] |= clamp.Strings.Strings.Sum(number => 1 << number.IndexAmong(setup.StringCount));
            }
        }

        return new ClampBars(bits);
    }

    /// <summary>True if a finger at this offset can lie from one string to a higher one without meeting a clamp between them.</summary>
    public bool LetAcross(int from, int to, int offset) =>
        offset >= _bits.Length || (_bits[offset] & ((1 << to) - (2 << from))) == 0;

    /// <summary>Alike for bars that are alike.</summary>
    public override string ToString() => string.Join(',', _bits);
}
