using System.Runtime.CompilerServices;

namespace Clampwise.Theory;

/// <summary>
/// What the exact pitches of a voicing say about its root, where several names fit the same tones over the same bass: how low each tone
/// first sounds, and nothing of how often. A tone doubled above changes no name.
/// </summary>
internal readonly struct VoicingFrame
{
    private const int RootOfFourth = 18;
    private const int AloneInOctave = 5;

    private const int Fourth = 5;
    private const int BassAlone = 1;
    private const int FourthAlone = BassAlone | (1 << Fourth);

    private readonly LowestHeights _lowest;
    private readonly ToneSet _inOctave;

    private VoicingFrame(LowestHeights lowest, ToneSet inOctave) => (_lowest, _inOctave) = (lowest, inOctave);

    /// <summary>Looks at every pitch once: how low each tone lies, and what stands in the lowest octave.</summary>
    public static VoicingFrame Of(HeardTones heard)
    {
        LowestHeights lowest = default;
        ToneSet inOctave = default;
        foreach (Pitch pitch in heard.Pitches)
        {
            int height = pitch - heard.Lowest;
            int tone = height % PitchClass.Count;
            // The bass stays at nothing; any other tone lies above it.
            lowest[tone] = tone != 0 && lowest[tone] == 0 ? (byte)height : Math.Min(lowest[tone], (byte)height);
            inOctave = height < PitchClass.Count ? inOctave.With(tone) : inOctave;
        }

        return new VoicingFrame(lowest, inOctave);
    }

    /// <summary>
    /// What is taken off or put on the cost of a name; negative speaks for it. A root that lies low, or that the lowest octave sets apart,
    /// speaks for a name.
    /// </summary>
    public int Adjustment(ReadingCandidate candidate)
    {
        int root = candidate.RootAboveBass;
        int low = _lowest[root] / PitchClass.Count;
        return _inOctave.Bits switch
        {
            // The root of a fourth is its upper tone (Hindemith, The Craft of Musical Composition, book 1).
            FourthAlone when root == Fourth => low - RootOfFourth,
            BassAlone when root == 0 => low - AloneInOctave,
            _ => low,
        };
    }

    // Semitones above the bass at which each of the twelve tones sounds first.
    [InlineArray(PitchClass.Count)]
    private struct LowestHeights
    {
        private byte _first;
    }
}
