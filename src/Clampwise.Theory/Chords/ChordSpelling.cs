namespace Clampwise.Theory;

/// <summary>How roots and basses of chords are spelled.</summary>
public static class ChordSpelling
{
    private const int MinorKeyOffset = 3;

    // A bass that is no tone of the chord: by semitones above the root, as slash basses are mostly written (common practice).
    private static readonly ChordDegree[] s_bassDegrees =
    [
        ChordDegree.Root, ChordDegree.Of(9, -1), ChordDegree.Of(9), ChordDegree.Of(3, -1), ChordDegree.Of(3), ChordDegree.Of(11),
        ChordDegree.Of(11, 1), ChordDegree.Of(5), ChordDegree.Of(6, -1), ChordDegree.Of(6), ChordDegree.Of(7, -1), ChordDegree.Of(7),
    ];

    /// <summary>
    /// The root spelled with fewer accidentals in its key: the signature of the major key on it, or of the minor key if the chord has a
    /// minor third. Of two equal ones F# and Ebm (common practice, no source).
    /// </summary>
    public static NoteName Root(PitchClass root, ChordQuality quality)
    {
        int centre = quality.IsMinor ? MinorKeyOffset : 0;
        // Major keys run from Db (-5) to F# (6), minor ones three places further: Ebm (-3) to G#m (8).
        int lowest = quality.IsMinor ? centre - 6 : centre - 5;
        return NoteName.FromFifths(lowest + NoteName.Mod((root.Number * 7) - lowest, PitchClass.Count));
    }

    /// <summary>The degree that a note sounding so many semitones above the root has in a chord, or as a bass foreign to it.</summary>
    public static ChordDegree Degree(ChordQuality quality, int semitonesAboveRoot)
    {
        foreach (ChordDegree tone in quality.Tones)
        {
            if (tone.Semitones == semitonesAboveRoot)
            {
                return tone;
            }
        }

        return s_bassDegrees[semitonesAboveRoot];
    }

    /// <summary>
    /// The bass under a root. A tone of the chord follows its degree; a foreign bass too, unless that needs a double accidental or a
    /// white key by a black key's name (E#, Cb), which nobody writes after a slash.
    /// </summary>
    public static NoteName Bass(NoteName root, ChordQuality quality, PitchClass bass)
    {
        int above = PitchClass.SemitonesUp(root.Class, bass);
        ChordDegree degree = Degree(quality, above);
        NoteName name = root + degree.Interval;
        bool isPlain = name.Accidentals == 0 || (Math.Abs(name.Accidentals) == 1 && name.Fifths is >= -6 and <= 10);
        bool isReadable = isPlain || (quality.Tones.Contains(degree) && Math.Abs(name.Accidentals) < 2);
        return isReadable ? name : NoteName.Usual(bass);
    }
}
