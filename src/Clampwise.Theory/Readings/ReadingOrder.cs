using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>Chooses among the names that fit a set of tones.</summary>
internal static class ReadingOrder
{
    /// <summary>The dearest name that still counts as one: beyond it a set is called a cluster.</summary>
    private const int DearestCost = 63;

    private static readonly ToneSet s_anyRoot = new(ToneSet.All);
    private static readonly ToneSet s_fifth = new(0b0000_1000_0001);
    private static readonly ToneSet s_fourth = new(0b0000_0010_0001);

    /// <summary>What sort of thing sounds, the first name being known.</summary>
    public static SonorityKind Kind(HeardTones heard, ReadingCandidate? first) => heard.FromBass.Count switch
    {
        0 => SonorityKind.Silence,
        1 => IsOnePitch(heard) ? SonorityKind.SingleNote : SonorityKind.Octaves,
        2 => heard.FromBass == s_fifth || heard.FromBass == s_fourth ? SonorityKind.PowerChord : SonorityKind.Interval,
        _ => first is null ? SonorityKind.Cluster : SonorityKind.Chord,
    };

    /// <summary>The name that a guitarist would write, if there is one.</summary>
    public static ReadingCandidate? First(HeardTones heard, MusicalKey? key)
    {
        ReadingCandidate? best = null;
        int bestCost = int.MaxValue;
        var frame = VoicingFrame.Of(heard);
        ToneSet roots = key?.ScaleFrom(heard.Bass) ?? s_anyRoot;
        foreach (ReadingCandidate candidate in ReadingTable.Candidates(heard.FromBass))
        {
            int cost = candidate.Cost + frame.Adjustment(candidate);
            int inKey = cost + OutsideKey(candidate, roots);
            if (cost <= DearestCost && inKey < bestCost)
            {
                (best, bestCost) = (candidate, inKey);
            }
        }

        return best;
    }

    /// <summary>All names, best first.</summary>
    public static ImmutableArray<Reading> Readings(ReadOnlySpan<Pitch> pitches, MusicalKey? key)
    {
        var heard = HeardTones.Of(pitches);
        if (heard.FromBass.Count < 2)
        {
            return [];
        }

        var costs = new List<(ReadingCandidate Candidate, int Cost)>();
        var frame = VoicingFrame.Of(heard);
        ToneSet roots = key?.ScaleFrom(heard.Bass) ?? s_anyRoot;
        foreach (ReadingCandidate candidate in ReadingTable.Candidates(heard.FromBass))
        {
            int cost = candidate.Cost + frame.Adjustment(candidate);
            if (cost <= DearestCost)
            {
                costs.Add((candidate, cost + OutsideKey(candidate, roots)));
            }
        }

        PitchClass bass = heard.Bass;
        var all = pitches.ToArray();
        var names = costs.OrderBy(pair => pair.Cost).Select(pair => pair.Candidate);
        return [.. names.Select(candidate => Read(candidate, bass, all, key))];
    }

    // A root outside the key speaks against a name, where another one is as near.
    private static int OutsideKey(ReadingCandidate candidate, ToneSet roots) => roots.Has(candidate.RootAboveBass) ? 0 : ReadingCosts.RootOutsideKey;

    private static Reading Read(ReadingCandidate candidate, PitchClass bass, Pitch[] pitches, MusicalKey? key) =>
        new(ChordSymbol.Of(bass + candidate.RootAboveBass, candidate.Quality, bass, key), pitches);

    private static bool IsOnePitch(HeardTones heard)
    {
        foreach (Pitch pitch in heard.Pitches)
        {
            if (pitch != heard.Lowest)
            {
                return false;
            }
        }

        return true;
    }
}
