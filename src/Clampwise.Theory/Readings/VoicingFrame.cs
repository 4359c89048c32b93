namespace Clampwise.Theory;

/// <summary>
/// What the exact pitches of a voicing say about its root, where several names fit the same tones over the same bass.
/// </summary>
internal readonly ref struct VoicingFrame
{
    /// <summary>More than the exact pitches can change between two names.</summary>
    public const int MostAdjustment = DoubledRoot + DoubledBassRoot + RootOfFrame + DoubledForeignBass + (Pitch.HighestMidi / SemitonesForOne);

    private const int DoubledRoot = 8;
    private const int DoubledBassRoot = 2;
    private const int RootOfFrame = 18;
    private const int DoubledForeignBass = 18;
    private const int SemitonesForOne = 6;

    private const int None = int.MaxValue;
    private const int Fourth = 5;
    private const int Fifth = 7;
    private const int Octave = 12;

    private readonly HeardTones _heard;
    private readonly int _second;
    private readonly int _third;

    private VoicingFrame(HeardTones heard, int second, int third)
    {
        _heard = heard;
        _second = second;
        _third = third;
    }

    /// <summary>Finds the two next higher pitches above the lowest.</summary>
    public static VoicingFrame Of(HeardTones heard)
    {
        (int second, int third) = (None, None);
        foreach (Pitch pitch in heard.Pitches)
        {
            int height = pitch - heard.Lowest;
            if (height > 0 && height < second)
            {
                (second, third) = (height, second);
            }
            else if (height > second && height < third)
            {
                third = height;
            }
        }

        return new VoicingFrame(heard, second, third);
    }

    /// <summary>
    /// What is taken off or put on the cost of a name; negative speaks for it. A root that is doubled, that lies low or that the lowest
    /// three pitches frame as a power chord speaks for a name; a foreign bass that sounds again above is not so foreign.
    /// </summary>
    public int Adjustment(ReadingCandidate candidate)
    {
        int root = candidate.RootAboveBass;
        (int count, int lowest) = CountAndLowest(root);
        int cost = lowest / SemitonesForOne;
        // The triad over a foreign bass stands for itself: how it is doubled says nothing about the bass.
        if (count > 1 && !candidate.IsBassForeign)
        {
            cost -= root == 0 ? DoubledRoot + DoubledBassRoot : DoubledRoot;
        }

        cost -= root == RootOfPowerChord() ? RootOfFrame : 0;
        cost += candidate.IsBassForeign && CountAndLowest(0).Count > 1 ? DoubledForeignBass : 0;
        return cost;
    }

    // The lowest three notes are root, fifth, root or fifth, root, fifth. The root of a fifth is its lower note, that of a fourth its
    // upper one (Hindemith, The Craft of Musical Composition, book 1).
    private int RootOfPowerChord() => (_second, _third) switch { (Fifth, Octave) => 0, (Fourth, Octave) => Fourth, _ => -1 };

    private (int Count, int Lowest) CountAndLowest(int aboveBass)
    {
        (int count, int lowest) = (0, None);
        foreach (Pitch pitch in _heard.Pitches)
        {
            int height = pitch - _heard.Lowest;
            if (height % PitchClass.Count == aboveBass)
            {
                count++;
                lowest = Math.Min(lowest, height);
            }
        }

        return (count, lowest);
    }
}
