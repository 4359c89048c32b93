namespace Clampwise.Theory;

/// <summary>How roots and basses of chords are spelled.</summary>
public static class ChordSpelling
{
    private const int MinorKeyOffset = 3;

    // Ebm and D#m have six flats and six sharps: the key decides between them.
    private const int FarthestSignature = 6;
    private const int FarthestInterval = 9;

    // What a foreign bass is called by the letters from the root up to it.
    private static readonly int[] s_foreignNumbers = [1, 9, 3, 11, 5, 6, 7];
    private static readonly ChordDegree s_foreignSeventh = ChordDegree.Of(7, -1);
    private static readonly ChordDegree s_foreignTritone = ChordDegree.Of(11, 1);

    // A bass that is no tone of the chord: by semitones above the root, as slash basses are mostly written (common practice).
    private static readonly ChordDegree[] s_bassDegrees =
    [
        ChordDegree.Root, ChordDegree.Of(9, -1), ChordDegree.Of(9), ChordDegree.Of(3, -1), ChordDegree.Of(3), ChordDegree.Of(11),
        s_foreignTritone, ChordDegree.Of(5), ChordDegree.Of(6, -1), ChordDegree.Of(6), ChordDegree.Of(7, -1), ChordDegree.Of(7),
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

    /// <summary>
    /// The root in a key. A note of the scale is spelled as the scale does, any other one as the key writes it; but a minor or diminished chord
    /// from outside keeps the spelling of its own minor key: C#m in C, not Dbm.
    /// </summary>
    public static NoteName Root(PitchClass root, ChordQuality quality, MusicalKey? key)
    {
        NoteName own = Root(root, quality);
        bool isOwn = key is not { } known || (quality.IsMinor && !known.Contains(root) && Math.Abs(own.Fifths - MinorKeyOffset) < FarthestSignature);
        return isOwn ? own : key!.Value.Write(root);
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

    /// <summary>The degree that a bass foreign to the chord has by its letter: a D# under C is a #9, an Eb a b3.</summary>
    public static ChordDegree ForeignDegree(NoteName root, NoteName bass)
    {
        int number = s_foreignNumbers[NoteName.Mod(bass.Step - root.Step, s_foreignNumbers.Length)];
        return ChordDegree.Of(number, (bass.Fifths - root.Fifths - Interval.Of(number).Fifths) / s_foreignNumbers.Length);
    }

    /// <summary>
    /// The bass under a root. One that is foreign to the chord is spelled as in the scale of the key, where there is one and it holds the note.
    /// Else it follows its degree, as a tone of the chord or a foreign one, with two exceptions: a white key goes by a
    /// black key's way of writing (E#, Cb) only as the chord's own third, fifth or seventh or as a seventh beneath a plain triad (Db/Cb), and a tritone foreign to the chord is written
    /// as that note mostly is (Am6/Eb).
    /// </summary>
    public static NoteName Bass(NoteName root, ChordQuality quality, PitchClass bass, MusicalKey? key = null)
    {
        ChordDegree degree = Degree(quality, PitchClass.SemitonesUp(root.Class, bass));
        NoteName name = root + degree.Interval;
        bool isOfChord = quality.Tones.Contains(degree);
        if (!isOfChord && key is { } known && known.Contains(bass) && IsNear(root, known.Spell(bass)))
        {
            return known.Spell(bass);
        }

        bool isEasy = name.Accidentals == 0 || (Math.Abs(name.Accidentals) == 1 && name.Fifths is >= -6 and <= 10);
        bool isReadable = isEasy ? isOfChord || degree != s_foreignTritone
            : !isOfChord && degree == s_foreignSeventh ? quality.IsPlainTriad && Math.Abs(name.Accidentals) == 1
            : isOfChord && Math.Abs(name.Accidentals) < 2 && IsOfPlainChord(quality, degree);
        return isReadable ? name : NoteName.Usual(bass);
    }

    // The root's own letter raised or lowered is no bass to write, nor what lies farther than an augmented or diminished interval.
    private static bool IsNear(NoteName root, NoteName bass) => root.Letter != bass.Letter && Math.Abs(bass.Fifths - root.Fifths) <= FarthestInterval;

    private static bool IsOfPlainChord(ChordQuality quality, ChordDegree degree) => degree.Number switch
    {
        3 or 7 => true,
        5 => degree.Alteration == 0 || quality.Triad == TriadKind.Diminished,
        _ => false,
    };
}
