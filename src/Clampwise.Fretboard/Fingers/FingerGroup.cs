namespace Clampwise.Fretboard;

/// <summary>Strings that one finger stops at one fret. Places count from the lowest string, 0; frets from the lowest fretted one.</summary>
/// <param name="Offset">Frets above the lowest fretted one.</param>
/// <param name="First">The lowest string.</param>
/// <param name="Last">The highest string; the same as the first unless it is a barre.</param>
/// <param name="Bits">One bit for each string that it stops.</param>
/// <param name="Edges">How many ringing strings lie right beside its ends.</param>
internal readonly record struct FingerGroup(int Offset, int First, int Last, int Bits, int Edges)
{
    public bool IsBarre => Last > First;

    public int Width => Last - First + 1;

    /// <summary>Strings from this finger to another one, from where they are closest: 0 if they lie across the same string.</summary>
    public int StringsTo(FingerGroup other) => Math.Max(0, Math.Max(other.First - Last, First - other.Last));
}
