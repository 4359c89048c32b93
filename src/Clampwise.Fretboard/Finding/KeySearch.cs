namespace Clampwise.Fretboard;

/// <summary>
/// Looks through all voicings for the best of each chord, so that a list made of them holds many chords however easy one of them is.
/// </summary>
internal sealed class KeySearch(VoicingIndex index, QueryMatcher matcher, KeyRanks ranks)
{
    private readonly BestOf?[] _best = new BestOf?[PackedVoicing.KeyCount];
    private readonly List<int> _keys = [];

    /// <summary>How many voicings fit, clusters and altered chords too.</summary>
    public int Total { get; private set; }

    /// <summary>Runs through the index and keeps so many voicings of each chord over each bass that ranks before some points.</summary>
    public void Run(int ofEach, double before)
    {
        foreach (PackedVoicing[] part in index.Parts)
        {
            foreach (PackedVoicing voicing in part)
            {
                if (!matcher.Fits(voicing, out double atBest))
                {
                    continue;
                }

                Total++;
                if (ranks[voicing.Key] < before)
                {
                    Offer(voicing, atBest, ofEach);
                }
            }
        }
    }

    /// <summary>What was kept.</summary>
    public IEnumerable<Candidate> Kept => _keys.SelectMany(key => _best[key]!.InOrder());

    /// <summary>What was kept of some chords.</summary>
    public IEnumerable<Candidate> KeptOf(Func<int, bool> isWanted) => _keys.Where(isWanted).SelectMany(key => _best[key]!.InOrder());

    private void Offer(PackedVoicing voicing, double atBest, int ofEach)
    {
        BestOf? best = _best[voicing.Key];
        if (best is null)
        {
            _best[voicing.Key] = best = new BestOf(ofEach);
            _keys.Add(voicing.Key);
        }

        if (best.Wants(atBest))
        {
            best.Offer(voicing, atBest + matcher.FurtherPoints(voicing));
        }
    }
}
