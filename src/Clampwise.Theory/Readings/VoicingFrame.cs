namespace Clampwise.Theory;

/// <summary>
/// What the exact pitches of a voicing say about its root, where several names fit the same tones over the same bass.
/// </summary>
internal readonly ref struct VoicingFrame
{
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

    /// <summary>What is taken off or put on the cost of a name; negative speaks for it.</summary>
    public int Adjustment(ReadingCandidate candidate)
    {
        int root = candidate.RootAboveBass;
        (int count, int lowest) = CountAndLowest(root);
        int cost = lowest / ReadingCosts.SemitonesForOneOfRootHeight;
        cost -= count > 1 && !candidate.IsBassForeign ? ReadingCosts.DoubledRoot : 0;
        cost -= root == RootOfPowerChord() ? ReadingCosts.RootOfPowerChord : 0;
        cost += candidate.IsBassForeign && CountAndLowest(0).Count > 1 ? ReadingCosts.DoubledForeignBass : 0;
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
