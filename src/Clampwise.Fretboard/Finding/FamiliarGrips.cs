namespace Clampwise.Fretboard;

/// <summary>
/// The grips that every player of six strings knows: open hands of standard tuning, and the barre hands that move. Counted from the home
/// clamp they stay what the fingers know, whatever they sound there (common practice, no source).
/// </summary>
internal static class FamiliarGrips
{
    private const int StringCount = 6;
    private const int BitsEach = 4;

    // Lowest string first. What rings and what is muted does not count, only where the fingers are.
    private static readonly string[] s_open =
    [
        "022100", "022000", "020100", "020000", "022030", "022200",
        "x02220", "x02210", "x02020", "x02010", "x02230", "x02200", "x02225",
        "xx0232", "xx0231", "xx0212", "xx0211", "xx0222", "xx0233", "xx0230", "200232",
        "x32010", "x32310", "x32030", "x32033", "xx3210", "xx3211",
        "320003", "320033", "320001", "x20003", "x21202",
    ];

    private static readonly string[] s_moveable =
        ["133211", "133111", "131211", "131111", "x13331", "x13321", "x13131", "x13121", "xx3211"];

    private static readonly HashSet<int> s_openFingers = [.. s_open.Select(FingersOf)];
    private static readonly HashSet<int> s_moveableFingers = [.. s_moveable.Select(FingersOf)];

    /// <summary>True if the fingers stand as in a familiar grip, counted from a home fret or, without a ringing string, anywhere.</summary>
    public static bool Holds(PackedVoicing voicing, int stringCount, int homeFret)
    {
        if (stringCount != StringCount)
        {
            return false;
        }

        (int fingers, int lowest, bool rings) = (0, int.MaxValue, false);
        for (int index = 0; index < StringCount; index++)
        {
            int stop = voicing.StopAt(index);
            int fret = StringStop.FromCode(stop).IsFretted ? StringStop.FretOf(stop) : 0;
            rings |= StringStop.FromCode(stop).IsRinging;
            lowest = fret > 0 ? Math.Min(lowest, fret) : lowest;
            fingers |= Digit(index, fret - homeFret);
        }

        return s_openFingers.Contains(fingers) || (!rings && lowest != int.MaxValue && s_moveableFingers.Contains(CountedFrom(voicing, lowest - 1)));
    }

    private static int CountedFrom(PackedVoicing voicing, int fret) => Enumerable.Range(0, StringCount).Sum(index =>
        voicing.StopAt(index) is var stop && StringStop.FromCode(stop).IsFretted ? Digit(index, StringStop.FretOf(stop) - fret) : 0);

    private static int FingersOf(string grip) => grip.Select((sign, index) => sign == 'x' ? 0 : Digit(index, sign - '0')).Sum();

    // A finger beside the clamp does what the clamp would do; one behind it belongs to no such grip.
    private static int Digit(int index, int offset) => offset switch
    {
        0 => 0,
        > 0 and < 1 << BitsEach => offset << (index * BitsEach),
        _ => 0,
    };
}
