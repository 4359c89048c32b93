using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// A fretting with what is asked of it most, in eight bytes: five bits of <see cref="StringStop"/> for each string, the lowest string
/// lowest; eight of difficulty in tenths; four of the bass and twelve of the pitch classes.
/// </summary>
internal readonly record struct PackedVoicing(ulong Bits)
{
    public const int BitsEach = 5;
    private const ulong StopsMask = (1UL << (BitsEach * StringNumber.Most)) - 1;
    private const int DifficultyShift = BitsEach * StringNumber.Most;
    private const int ClassesShift = DifficultyShift + 8;
    private const int BassShift = ClassesShift + PitchClass.Count;
    private const double StepsInAPoint = 10.0;

    /// <summary>Difficulties beyond it are kept as this.</summary>
    public const double HardestPoints = byte.MaxValue / StepsInAPoint;

    /// <summary>Keys lie below it.</summary>
    public const int KeyCount = 1 << 16;

    /// <summary>Bass and pitch classes in one number.</summary>
    public int Key => (int)(Bits >> ClassesShift);

    public ulong Stops => Bits & StopsMask;

    /// <summary>Difficulty in points, to a tenth.</summary>
    public double Difficulty => (byte)(Bits >> DifficultyShift) / StepsInAPoint;

    /// <summary>The pitch classes that sound, C the lowest of twelve bits.</summary>
    public int Classes => (int)(Bits >> ClassesShift) & ((1 << PitchClass.Count) - 1);

    public int BassClass => (int)(Bits >> BassShift);

    public static int KeyOf(int bass, int classes) => (bass << PitchClass.Count) | classes;

    public static (int Bass, int Classes) OfKey(int key) => (key >> PitchClass.Count, key & ((1 << PitchClass.Count) - 1));

    public static PackedVoicing Of(in WalkedFretting fretting, double difficulty)
    {
        ulong steps = (ulong)Steps(difficulty);
        return new PackedVoicing(
            fretting.Stops
            | (steps << DifficultyShift)
            | ((ulong)fretting.Classes << ClassesShift)
            | ((ulong)fretting.BassClass << BassShift));
    }

    /// <summary>The stops of a fretting and nothing else.</summary>
    public static PackedVoicing Of(Fretting fretting) => new(fretting.Stops
        .Select((stop, index) => (ulong)stop.Code << (index * BitsEach))
        .Aggregate(0UL, (bits, stop) => bits | stop));

    /// <summary>A difficulty as it is kept: to a tenth, half a tenth upward, and no more than <see cref="HardestPoints"/>.</summary>
    public static double ToTenth(double difficulty) => Steps(difficulty) / StepsInAPoint;

    // Prices are multiples of a twentieth: a little more keeps those that lie half way from falling either way by rounding error.
    private static double Steps(double difficulty) => Math.Min(byte.MaxValue, Math.Floor((difficulty * StepsInAPoint) + 0.501));

    /// <summary>The stop code of the string at a place from the lowest, 0.</summary>
    public int StopAt(int index) => (int)(Bits >> (index * BitsEach)) & ((1 << BitsEach) - 1);

    /// <summary>All stops but the one at a place from the lowest.</summary>
    public ulong StopsWithout(int index) => Stops & ~(((1UL << BitsEach) - 1) << (index * BitsEach));

    /// <summary>One bit for each string that sounds, the lowest string lowest.</summary>
    public static int SoundingBits(ulong stops, int stringCount)
    {
        int sounding = 0;
        for (int index = 0; index < stringCount; index++)
        {
            sounding |= ((stops >> (index * BitsEach)) & ((1 << BitsEach) - 1)) == 0 ? 0 : 1 << index;
        }

        return sounding;
    }

    public Fretting ToFretting(int stringCount)
    {
        Span<StringStop> stops = stackalloc StringStop[stringCount];
        for (int index = 0; index < stringCount; index++)
        {
            stops[index] = StringStop.FromCode(StopAt(index));
        }

        return Fretting.Of(stops);
    }
}
