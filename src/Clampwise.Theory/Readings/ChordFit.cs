namespace Clampwise.Theory;

/// <summary>Which tones a quality must have to be called by its name, and which may be left out (common practice).</summary>
internal sealed class ChordFit
{
    private ChordFit(ToneSet all, ToneSet needed) => (All, Needed) = (all, needed);

    /// <summary>Every tone, as semitones above the root.</summary>
    public ToneSet All { get; }

    /// <summary>The tones that must sound.</summary>
    public ToneSet Needed { get; }

    public static ChordFit Of(ChordQuality quality)
    {
        ToneSet all = default;
        ToneSet needed = default;
        foreach (ChordDegree tone in quality.Tones)
        {
            all = all.With(tone.Semitones);
            needed = MayBeLeftOut(quality, tone) ? needed : needed.With(tone.Semitones);
        }

        return new ChordFit(all, needed);
    }

    /// <summary>True if these tones, counted from the root, can go by the name.</summary>
    public bool Fits(ToneSet sounding) => Needed.IsWithin(sounding) && sounding.IsWithin(All);

    /// <summary>
    /// A perfect fifth, unless the chord is a suspended triad or has an altered tone added; the natural ninth and eleventh beneath a higher
    /// extension; the third beneath the natural eleventh of a dominant, which it rubs against.
    /// </summary>
    private static bool MayBeLeftOut(ChordQuality quality, ChordDegree tone)
    {
        bool hasSixthOrSeventh = quality.Extent != ChordExtent.Triad;
        bool hasNaturalAdds = quality.Triad is TriadKind.Major or TriadKind.Minor && quality.Added.All(added => added.Alteration == 0);
        bool isPlainEleventh = quality is { Extent: ChordExtent.Eleventh, Seventh: SeventhKind.Minor, Triad: TriadKind.Major }
            && quality.Altered.IsEmpty;
        return (tone.Number, tone.Alteration) switch
        {
            (5, 0) => quality.Omitted.IsEmpty && quality.Triad != TriadKind.Power && (hasSixthOrSeventh || hasNaturalAdds),
            (9, 0) => quality.Extent >= ChordExtent.Eleventh || (quality.Extent == ChordExtent.Ninth && quality.Altered.HasNumber(11)),
            (11, 0) => quality.Extent == ChordExtent.Thirteenth,
            (3, 0) => isPlainEleventh,
            (5 or 9, _) => quality.Altered == ChordQualityParser.AlteredDominant,
            _ => false,
        };
    }
}
