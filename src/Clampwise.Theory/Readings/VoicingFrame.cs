using System.Runtime.CompilerServices;

namespace Clampwise.Theory;

/// <summary>
/// What the exact pitches of a voicing say about its root, where several names fit the same tones over the same bass.
/// </summary>
internal readonly struct VoicingFrame
{
    private const int DoubledRoot = 8;
    private const int DoubledBassRoot = 2;
    private const int RootOfFrame = 18;
    private const int DoubledForeignBass = 18;
    private const int SemitonesForOne = 6;

    private const int None = int.MaxValue;
    private const int Fourth = 5;
    private const int Fifth = 7;
    private const int Octave = 12;

    private readonly LowestHeights _lowest;
    private readonly ToneSet _doubled;
    private readonly int _rootOfPowerChord;

    private VoicingFrame(LowestHeights lowest, ToneSet doubled, int rootOfPowerChord) =>
        (_lowest, _doubled, _rootOfPowerChord) = (lowest, doubled, rootOfPowerChord);

    /// <summary>Looks at every pitch once: which tones are doubled, how low each lies, and what the lowest three make.</summary>
    public static VoicingFrame Of(HeardTones heard)
    {
        (int second, int third) = (None, None);
        LowestHeights lowest = default;
        ToneSet seen = default;
        ToneSet doubled = default;
        foreach (Pitch pitch in heard.Pitches)
        {
            int height = pitch - heard.Lowest;
            int tone = height % PitchClass.Count;
            bool isSeen = seen.Has(tone);
            doubled = isSeen ? doubled.With(tone) : doubled;
            lowest[tone] = isSeen ? Math.Min(lowest[tone], (byte)height) : (byte)height;
            seen = seen.With(tone);
            (second, third) = height == 0 || height == second ? (second, third)
                : height < second ? (height, second)
                : (second, Math.Min(third, height));
        }

        return new VoicingFrame(lowest, doubled, RootOfPowerChord(second, third));
    }

    /// <summary>
    /// What is taken off or put on the cost of a name; negative speaks for it. A root that is doubled, that lies low or that the lowest
    /// three pitches frame as a power chord speaks for a name; a foreign bass that sounds again above is not so foreign.
    /// </summary>
    public int Adjustment(ReadingCandidate candidate)
    {
        int root = candidate.RootAboveBass;
        int cost = _lowest[root] / SemitonesForOne;
        // The triad over a foreign bass stands for itself: how it is doubled says nothing about the bass.
        if (_doubled.Has(root) && !candidate.IsBassForeign)
        {
            cost -= root == 0 ? DoubledRoot + DoubledBassRoot : DoubledRoot;
        }

        cost -= root == _rootOfPowerChord ? RootOfFrame : 0;
        cost += candidate.IsBassForeign && _doubled.Has(0) ? DoubledForeignBass : 0;
        return cost;
    }

    // The lowest three notes are root, fifth, root or fifth, root, fifth. The root of a fifth is its lower note, that of a fourth its
    // upper one (Hindemith, The Craft of Musical Composition, book 1).
    private static int RootOfPowerChord(int second, int third) => (second, third) switch
    {
        (Fifth, Octave) => 0,
        (Fourth, Octave) => Fourth,
        _ => -1,
    };

    // Semitones above the bass at which each of the twelve tones sounds first.
    [InlineArray(PitchClass.Count)]
    private struct LowestHeights
    {
        private byte _first;
    }
}
