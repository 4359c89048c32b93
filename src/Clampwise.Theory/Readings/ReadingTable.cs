namespace Clampwise.Theory;

/// <summary>
/// All sensible names of every set of tones over a bass, best first: 2,048 sets, each worked out when it is first asked for. Sets are counted
/// from the bass, so a reading moves with its pitches.
/// </summary>
internal static class ReadingTable
{
    private const int MostTones = 7;

    // How much dearer than the best a name may be before it is far-fetched: wide enough for C6/A beside Am7, too narrow for a plain triad to
    // go by anything else. The exact pitches choose among sensible names only.
    private const int FarFetched = 28;

    private static readonly ReadingCandidate[]?[] s_entries = new ReadingCandidate[]?[(ToneSet.All + 1) / 2];

    /// <summary>The names of a set that holds its bass (semitone 0).</summary>
    // Two threads may work out the same entry at once: both find the same, and either may stay.
    public static ReadingCandidate[] Candidates(ToneSet fromBass) => s_entries[fromBass.Bits >> 1] ??= WorkOut(fromBass);

    private static ReadingCandidate[] WorkOut(ToneSet fromBass)
    {
        var found = new List<ReadingCandidate>();
        if (fromBass.Count is < 2 or > MostTones)
        {
            return [];
        }

        for (int root = 0; root < PitchClass.Count; root++)
        {
            if (fromBass.Has(root))
            {
                AddReadings(found, fromBass, root);
            }
        }

        int dearest = found.Select(name => (int)name.Cost).DefaultIfEmpty().Min() + FarFetched;
        return [.. found.Where(name => name.Cost <= dearest).OrderBy(name => name.Cost).ThenBy(name => name.RootAboveBass).ThenBy(name => name.QualityIndex)];
    }

    private static void AddReadings(List<ReadingCandidate> found, ToneSet fromBass, int root)
    {
        ToneSet whole = fromBass.From(root);
        int bass = (PitchClass.Count - root) % PitchClass.Count;
        ToneSet above = whole.Without(bass);
        int crowding = ReadingCosts.OfCrowding(whole);
        ReadOnlySpan<ChordFit> fits = ReadingVocabulary.Fits.AsSpan();
        for (int index = 0; index < fits.Length; index++)
        {
            ChordFit fit = fits[index];
            // Most names have no room for the tones, whatever the bass is.
            if (!above.IsWithin(fit.All))
            {
                continue;
            }

            ChordQuality quality = ReadingVocabulary.Qualities[index];
            int cost = ReadingVocabulary.Costs[index] + crowding;
            if (fit.Fits(whole, bass))
            {
                ChordDegree inBass = ChordSpelling.Degree(quality, bass);
                cost += ReadingCosts.OfMissing(quality, whole) + ReadingCosts.OfInversion(quality, inBass, whole);
                found.Add(new ReadingCandidate((byte)root, (byte)index, false, (short)cost));
            }
            else if (root != 0 && (above.Count >= 3 || quality.Triad == TriadKind.Power) && fit.FitsOver(whole, bass))
            {
                cost += ReadingCosts.OfMissing(quality, above) + ReadingCosts.OfForeignBass(quality, bass);
                found.Add(new ReadingCandidate((byte)root, (byte)index, true, (short)cost));
            }
        }
    }
}
