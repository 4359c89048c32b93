namespace Clampwise.Fretboard;

/// <summary>
/// What is known of every stop pattern over the same grounds and clamps: worked out when first asked for, and then the same at every position of
/// the neck. A pattern's slot has one digit a string, the lowest string lowest: 0 muted, 1 ringing, 2 and up fretted.
/// </summary>
internal sealed class PatternTable
{
    /// <summary>The digit of a finger at the lowest fretted fret.</summary>
    public const int FirstFretted = 2;

    private const byte Unknown = byte.MaxValue;

    // Beyond eight million slots, as eight strings over six frets have, every answer is worked out anew.
    private const int MostSlots = 1 << 23;
    private readonly int _span;
    private readonly int[] _groundOffsets;
    private readonly FingerSearch _search;
    private readonly FingerFronts _fronts;
    private readonly int _size;
    private readonly byte[]?[] _fewest = new byte[]?[2];

    /// <param name="groundOffsets">Each string's ground above the lowest fretted fret, as <see cref="GroundOffset"/> gives it.</param>
    /// <param name="clamps">The clamps that no barre can lie across.</param>
    /// <param name="span">The span of frets.</param>
    /// <param name="usesThumb">True if the thumb may stop the lowest string.</param>
    public PatternTable(int[] groundOffsets, ClampBars clamps, int span, bool usesThumb)
    {
        (_groundOffsets, _span) = (groundOffsets, span);
        _search = new FingerSearch(groundOffsets.Length, usesThumb, clamps);
        double size = Math.Pow(Radix(span), groundOffsets.Length);
        _size = size <= MostSlots ? (int)size : 0;
        _fronts = new FingerFronts(_size);
    }

    /// <summary>How many values a digit of a slot has.</summary>
    public static int Radix(int span) => FirstFretted + span;

    /// <summary>A ground counted from the lowest fretted fret; all below are -1, and all above the span are alike.</summary>
    public static int GroundOffset(int ground, int lowestFret, int span) => Math.Clamp(ground - lowestFret, -1, span - 1);

    /// <summary>The least points for fingering a pattern, muted inner strings counted in; infinite if a hand cannot.</summary>
    /// <param name="slot">The pattern.</param>
    /// <param name="strainScale">What remains of the string at the lowest fretted fret, as a multiple of the hand's span.</param>
    public double LeastPoints(int slot, double strainScale)
    {
        if (!_fronts.Has(slot))
        {
            ulong pattern = Pattern(slot);
            double muted = StopPattern.MutedInside(pattern, _groundOffsets.Length) * FingerPrices.MutedInside;
            _fronts.Find(slot, _search, pattern, muted);
        }

        return _fronts.Least(slot, strainScale);
    }

    /// <summary>The fewest fingers that a pattern needs by a rule about barres.</summary>
    public int FewestFingers(int slot, BarreRule rule)
    {
        if (_size == 0)
        {
            return CountFingers(slot, rule);
        }

        byte[]? kept = _fewest[(int)rule];
        if (kept is null)
        {
            kept = new byte[_size];
            Array.Fill(kept, Unknown);
            _fewest[(int)rule] = kept;
        }

        return kept[slot] != Unknown ? kept[slot] : kept[slot] = (byte)CountFingers(slot, rule);
    }

    private int CountFingers(int slot, BarreRule rule)
    {
        ulong pattern = Pattern(slot);
        return rule == BarreRule.Any ? _search.FewestFingers(pattern) : StopPattern.FingersWithOneBarre(pattern, _groundOffsets.Length);
    }

    private ulong Pattern(int slot)
    {
        ulong pattern = 0;
        for (int index = 0; index < _groundOffsets.Length; index++)
        {
            int digit = slot % Radix(_span);
            slot /= Radix(_span);
            byte stop = digit switch
            {
                0 => StopPattern.Muted,
                1 => StopPattern.Ringing(_groundOffsets[index]),
                _ => StopPattern.Fretted(digit - FirstFretted),
            };
            pattern |= (ulong)stop << (index * StopPattern.BitsEach);
        }

        return pattern;
    }
}
