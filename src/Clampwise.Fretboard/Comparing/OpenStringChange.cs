using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>One open string in two setups.</summary>
/// <param name="Number">Which string.</param>
/// <param name="From">What it rings in the first, spelled in its key.</param>
/// <param name="To">What it rings in the second, spelled in its key.</param>
/// <param name="WasHeld">True if a clamp holds it in the first.</param>
/// <param name="IsHeld">True if a clamp holds it in the second.</param>
public sealed record OpenStringChange(StringNumber Number, SpelledPitch From, SpelledPitch To, bool WasHeld, bool IsHeld)
{
    /// <summary>How far the second lies above the first.</summary>
    public int SemitonesUp => To.Midi - From.Midi;

    /// <summary>In words: <c>string 3 rings G3, free, then A3, held: two semitones up</c>.</summary>
    public override string ToString()
    {
        string change = SemitonesUp == 0 ? "" : $": {Spoken.Semitones(SemitonesUp)}";
        return $"string {Number} rings {From}, {Held(WasHeld)}, then {To}, {Held(IsHeld)}{change}";
    }

    private static string Held(bool isHeld) => isHeld ? "held" : "free";
}
