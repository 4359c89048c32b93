namespace Clampwise.Theory;

/// <summary>Which tones a quality must have to be called by its name, and which may be left out (common practice).</summary>
internal sealed class ChordFit
{
    private const int FlatNinth = 1;
    private const int Ninth = 2;
    private const int MinorThird = 3;
    private const int MajorThird = 4;
    private const int FlatFifth = 6;
    private const int Fifth = 7;
    private const int SharpFifth = 8;

    private readonly ToneSet _needed;
    private readonly bool _isEleventh;
    private readonly bool _isAlteredDominant;
    private readonly bool _isTurnedWithFifth;
    private readonly bool _isCalledWithoutThird;

    private ChordFit(ChordQuality quality, ToneSet all, ToneSet needed)
    {
        (All, _needed) = (all, needed);
        _isEleventh = quality.Extent == ChordExtent.Eleventh && needed.Has(MajorThird) != all.Has(MajorThird);
        _isAlteredDominant = quality.Altered == ChordQualityParser.AlteredDominant;
        _isCalledWithoutThird = quality is { Triad: TriadKind.Major, Extent: ChordExtent.Seventh or ChordExtent.Ninth }
            && quality.Altered.IsEmpty && quality.Added.IsEmpty && quality.Omitted.IsEmpty;
        _isTurnedWithFifth = quality is { Extent: ChordExtent.Sixth, Triad: TriadKind.Major } || HasFourthBesideThird(quality);
    }

    /// <summary>Every tone, as semitones above the root.</summary>
    public ToneSet All { get; }

    public static ChordFit Of(ChordQuality quality)
    {
        ToneSet all = default;
        ToneSet needed = default;
        foreach (ChordDegree tone in quality.Tones)
        {
            all = all.With(tone.Semitones);
            needed = MayBeLeftOut(quality, tone) ? needed : needed.With(tone.Semitones);
        }

        return new ChordFit(quality, all, needed);
    }

    /// <summary>
    /// True if these tones, counted from the root, can go by the name with one of its tones in the bass. A 6 or an add4 without its fifth needs
    /// its root there: turned over, the 6 is a minor triad.
    /// </summary>
    public bool Fits(ToneSet sounding, int bass) =>
        All.Has(bass) && Fits(sounding) && (bass == 0 || !_isTurnedWithFifth || sounding.Has(Fifth));

    /// <summary>
    /// True if these tones, counted from the root, can go by the name over a bass that is none of its tones. A name is bent once only: all
    /// of its fifth is wanted then, and the bass must not be the third that the chord does without.
    /// </summary>
    public bool FitsOver(ToneSet sounding, int bass)
    {
        ToneSet above = sounding.Without(bass);
        bool isThirdOfChord = bass is MinorThird or MajorThird && !All.Has(MinorThird) && !All.Has(MajorThird);
        return !All.Has(bass) && !isThirdOfChord && Fits(above) && (above.Has(Fifth) || !All.Has(Fifth));
    }

    /// <summary>
    /// True if these tones, counted from the root, lack the third of a plain 7, maj7 or 9 and have all else, the fifth too: lessons call
    /// that by the same name, the one-finger D7 over ringing strings.
    /// </summary>
    public bool FitsWithoutThird(ToneSet sounding, int bass) =>
        _isCalledWithoutThird && !sounding.Has(MajorThird) && sounding.Has(bass) && sounding == All.Without(MajorThird);

    // An eleventh without third and ninth is a 7sus4; an altered dominant without an altered fifth or ninth names the other: 7b9, 7#5.
    private bool Fits(ToneSet sounding) =>
        _needed.IsWithin(sounding) && sounding.IsWithin(All)
        && (!_isEleventh || sounding.Has(MajorThird) || sounding.Has(Ninth))
        && (!_isAlteredDominant || IsAlteredBothWays(sounding));

    // The sharp ninth sounds as the minor third.
    private static bool IsAlteredBothWays(ToneSet sounding) =>
        (sounding.Has(FlatFifth) || sounding.Has(SharpFifth)) && (sounding.Has(FlatNinth) || sounding.Has(MinorThird));

    /// <summary>
    /// A perfect fifth, where the chord is known without it; the natural ninth and eleventh beneath a higher extension; the third beneath
    /// the natural eleventh of a dominant, which it rubs against.
    /// </summary>
    private static bool MayBeLeftOut(ChordQuality quality, ChordDegree tone)
    {
        bool isPlainEleventh = quality is { Extent: ChordExtent.Eleventh, Seventh: SeventhKind.Minor, Triad: TriadKind.Major }
            && quality.Altered.IsEmpty;
        return (tone.Number, tone.Alteration) switch
        {
            (5, 0) => IsKnownWithoutFifth(quality),
            (9, 0) => quality.Extent >= ChordExtent.Eleventh || (quality.Extent == ChordExtent.Ninth && quality.Altered.HasNumber(11)),
            (11, 0) => quality.Extent == ChordExtent.Thirteenth,
            (3, 0) => isPlainEleventh,
            (5 or 9, _) => quality.Altered == ChordQualityParser.AlteredDominant,
            _ => false,
        };
    }

    /// <summary>
    /// Not a fifth alone, a suspended triad or one with a sixth, a chord with an altered tone added, a 6 with an added fourth, a m6 (a
    /// diminished triad) or a minor chord with #11 or b13 (which would be heard as the fifth):
    /// without the fifth each is some plainer chord.
    /// </summary>
    private static bool IsKnownWithoutFifth(ChordQuality quality)
    {
        bool isPlain = quality.Omitted.IsEmpty && quality.Added.All(added => added.Alteration == 0)
            && (quality.Extent == ChordExtent.Triad || !HasFourthBesideThird(quality));
        return isPlain && quality.Triad switch
        {
            TriadKind.Major => true,
            TriadKind.Minor => quality.Extent != ChordExtent.Sixth && !quality.Altered.HasNumber(11) && !quality.Altered.HasNumber(13),
            TriadKind.Suspended2 or TriadKind.Suspended4 => quality.Extent >= ChordExtent.Seventh,
            _ => false,
        };
    }

    private static bool HasFourthBesideThird(ChordQuality quality) => quality.Added.HasNumber(4);
}
