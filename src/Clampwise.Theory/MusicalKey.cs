using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>
/// A major or minor key: its tonic and the seven degrees of its scale, and how it spells every pitch class. The default is C major.
/// Major keys run from Cb (seven flats) to C# (seven sharps), minor ones from Abm to A#m: the keys that have a signature.
/// </summary>
public readonly record struct MusicalKey
{
    private const int MostAccidentals = 7;
    private const int MinorOffset = 3;

    // Places on the line of fifths counted from the tonic run from the flat second to the raised fourth, in both modes (common practice).
    private const int Lowest = -5;
    private const int LowestOfMajor = -1;
    private const int LowestOfMinor = -4;
    private const int ScaleNotes = 7;
    private const int FlatSeventh = -2;

    // Five flats to six sharps: each pitch class has one such key.
    private const int LowestSignature = -5;

    private MusicalKey(NoteName tonic, bool isMinor) => (Tonic, IsMinor) = (tonic, isMinor);

    /// <summary>The tonic as it is spelled.</summary>
    public NoteName Tonic { get; }

    /// <summary>True for a minor key.</summary>
    public bool IsMinor { get; }

    /// <summary>Sharps of the signature, negative for flats: -7 to 7.</summary>
    public int Signature => Tonic.Fifths - (IsMinor ? MinorOffset : 0);

    /// <summary>The degrees of the scale, natural in minor, the tonic first.</summary>
    public ImmutableArray<NoteName> Scale
    {
        get
        {
            NoteName tonic = Tonic;
            return [.. (IsMinor ? (int[])[0, 2, -3, -1, 1, -4, -2] : [0, 2, 4, -1, 1, 3, 5]).Select(up => NoteName.FromFifths(tonic.Fifths + up))];
        }
    }

    /// <summary>True for a note of the scale, natural in minor.</summary>
    public bool Contains(PitchClass pitchClass)
    {
        int lowest = IsMinor ? LowestOfMinor : LowestOfMajor;
        return Place(pitchClass) >= lowest && Place(pitchClass) < lowest + ScaleNotes;
    }

    /// <summary>
    /// The key so many semitones higher, spelled with the fewest accidentals; of six sharps and six flats the sharps. Whole octaves change nothing.
    /// </summary>
    public MusicalKey Up(int semitones)
    {
        if (semitones % PitchClass.Count == 0)
        {
            return this;
        }

        int lowest = LowestSignature + (IsMinor ? MinorOffset : 0);
        int fifths = lowest + NoteName.Mod(((Tonic.Class + semitones).Number * 7) - lowest, PitchClass.Count);
        return new MusicalKey(NoteName.FromFifths(fifths), IsMinor);
    }

    /// <summary>A key on a tonic; refused without a signature of at most seven sharps or flats.</summary>
    public static Result<MusicalKey> Of(NoteName tonic, bool isMinor = false)
    {
        var key = new MusicalKey(tonic, isMinor);
        return Math.Abs(key.Signature) <= MostAccidentals ? key : TheoryWords.NoSuchKey(key.ToString());
    }

    /// <summary>Reads a tonic with nothing after it for major or m for minor: <c>F#</c>, <c>Bb</c>, <c>C#m</c>.</summary>
    public static Result<MusicalKey> Parse(string text)
    {
        string trimmed = text.Trim();
        if (!NoteName.ParseStart(trimmed, 0).TryGet(out var tonic, out Fault? fault))
        {
            return fault;
        }

        return trimmed[tonic.Length..].Trim() switch
        {
            "" or "major" or "maj" => Of(tonic.Name),
            "m" or "minor" or "min" => Of(tonic.Name, isMinor: true),
            _ => TheoryWords.ExpectedKey(trimmed, tonic.Length),
        };
    }

    /// <summary>
    /// How the key spells a pitch class: as its scale does, outside it with the flat second and the raised fourth, the lowered third, sixth
    /// and seventh of major, and the raised third, sixth and seventh of minor.
    /// </summary>
    public NoteName Spell(PitchClass pitchClass) => NoteName.FromFifths(Tonic.Fifths + Place(pitchClass));

    /// <summary>
    /// The same as a player writes it: outside the scale a white key goes by its own letter, E and not Fb, but for the lowered seventh of
    /// major, which is a degree of common songs (common practice, no source).
    /// </summary>
    public NoteName Write(PitchClass pitchClass)
    {
        NoteName name = Spell(pitchClass);
        var usual = NoteName.Usual(pitchClass);
        bool isDegree = Contains(pitchClass) || (!IsMinor && Place(pitchClass) == FlatSeventh);
        return isDegree || (usual.Accidentals != 0 && Math.Abs(name.Accidentals) == 1) ? name : usual;
    }

    /// <summary>The scale in semitones above a note.</summary>
    internal ToneSet ScaleFrom(PitchClass note)
    {
        // Semitones above the tonic: 0 2 4 5 7 9 11, in minor 0 2 3 5 7 8 10.
        var scale = new ToneSet(IsMinor ? 0b0101_1010_1101 : 0b1010_1011_0101);
        return scale.From(PitchClass.SemitonesUp(Tonic.Class, note));
    }

    private int Place(PitchClass pitchClass) => NoteName.Mod((pitchClass.Number * 7) - Tonic.Fifths - Lowest, PitchClass.Count) + Lowest;

    /// <summary>The tonic, and m for minor: <c>F#</c>, <c>C#m</c>.</summary>
    public override string ToString() => IsMinor ? $"{Tonic}m" : $"{Tonic}";
}
