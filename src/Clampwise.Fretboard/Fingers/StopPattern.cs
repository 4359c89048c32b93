using System.Numerics;

namespace Clampwise.Fretboard;

/// <summary>
/// All that decides which fingers can stop a fretting, wherever on the neck: one byte a string, the lowest string lowest. A barre may
/// lie across a muted string, across one stopped at its fret or above, and across one held by a clamp at its fret or above; so a
/// ringing string is kept with its ground. Whether the clamp itself is in its way, <see cref="ClampBars"/> say.
/// </summary>
internal static class StopPattern
{
    public const int BitsEach = 8;
    private const int FirstRinging = 1;
    private const int FirstFretted = 32;

    /// <summary>A muted string.</summary>
    public const byte Muted = 0;

    /// <summary>A ringing string whose ground lies so many frets above the lowest fretted one; below it all count as -1.</summary>
    public static byte Ringing(int groundOffset) => (byte)(FirstRinging + 1 + Math.Clamp(groundOffset, -1, Fret.Last));

    /// <summary>A finger so many frets above the lowest fretted one.</summary>
    public static byte Fretted(int offset) => (byte)(FirstFretted + offset);

    public static bool IsFretted(byte stop) => stop >= FirstFretted;

    public static bool IsRinging(byte stop) => stop is >= FirstRinging and < FirstFretted;

    public static int Offset(byte stop) => stop - FirstFretted;

    /// <summary>True if a barre at this offset may lie across the string without changing what it does.</summary>
    public static bool LetsAcross(byte stop, int offset) => stop switch
    {
        Muted => true,
        >= FirstFretted => stop - FirstFretted >= offset,
        _ => stop - FirstRinging - 1 >= offset,
    };

    public static byte At(ulong pattern, int index) => (byte)(pattern >> (index * BitsEach));

    /// <summary>The pattern of a fretting in a setup, and the lowest fretted fret; 0 if there is none.</summary>
    public static (ulong Pattern, int LowestFret) Of(Setup setup, Fretting fretting)
    {
        int lowest = fretting.Stops.Min(stop => stop.Finger?.Number) ?? 0;
        ulong pattern = 0;
        for (int index = 0; index < setup.StringCount; index++)
        {
            StringStop stop = fretting[index];
            byte code = stop.IsMuted ? Muted
                : stop.Finger is { } fret ? Fretted(fret.Number - lowest)
                : Ringing(setup.GroundAt(index).Number - lowest);
            pattern |= (ulong)code << (index * BitsEach);
        }

        return (pattern, lowest);
    }

    /// <summary>The fingers needed if one may lie across strings at the lowest fretted fret: see <see cref="BarreRule.One"/>.</summary>
    public static int FingersWithOneBarre(ulong pattern, int stringCount)
    {
        int fretted = 0, run = 0, longest = 0;
        for (int index = 0; index < stringCount; index++)
        {
            byte stop = At(pattern, index);
            fretted += IsFretted(stop) ? 1 : 0;
            run = stop == Fretted(0) ? run + 1 : LetsAcross(stop, 0) ? run : 0;
            longest = Math.Max(longest, run);
        }

        return fretted == 0 ? 0 : fretted - longest + 1;
    }

    /// <summary>Muted strings between the lowest and the highest sounding one.</summary>
    public static int MutedInside(ulong pattern, int stringCount)
    {
        int sounding = 0;
        for (int index = 0; index < stringCount; index++)
        {
            sounding |= At(pattern, index) == Muted ? 0 : 1 << index;
        }

        int across = BitOperations.Log2((uint)sounding) - BitOperations.TrailingZeroCount(sounding) + 1;
        return sounding == 0 ? 0 : across - BitOperations.PopCount((uint)sounding);
    }
}
