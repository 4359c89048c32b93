namespace Clampwise.Theory;

/// <summary>
/// Reads what stands between the root and the bass of a chord symbol: a word for the triad, a number, then alterations, added and
/// omitted tones and suspensions in any order, in parentheses or not.
/// </summary>
internal static class ChordQualityParser
{
    /// <summary>What alt means: both altered fifths and both altered ninths over the seventh (common practice).</summary>
    public static readonly DegreeSet AlteredDominant =
        DegreeSet.Of(ChordDegree.Of(5, -1), ChordDegree.Of(5, 1), ChordDegree.Of(9, -1), ChordDegree.Of(9, 1));

    private static readonly string[] s_diminished = ["diminished", "dim", "°", "º", "˚"];
    private static readonly string[] s_halfDiminished =
        ["half-diminished", "half diminished", "halfdim", "half-dim", "hdim", "ø", "Ø", "∅"];
    private static readonly string[] s_augmented = ["augmented", "aug", "Aug", "+5", "+"];
    private static readonly string[] s_minor = ["minor", "Minor", "min", "Min", "MIN", "mi", "Mi", "MI", "m", "-", "−", "–"];
    private static readonly string[] s_major = ["major", "Major", "maj", "Maj", "MAJ", "Ma", "MA", "M"];
    internal static readonly string[] Triangles = ["Δ", "∆", "△", "▵", "^"];

    public static Result<ChordQuality> ParseWhole(string text)
    {
        var reader = new ChordTextReader(text, 0);
        return Parse(reader).Then<ChordQuality>(quality => reader.IsAtEnd ? quality : TheoryWords.NothingMore(text, reader.Position));
    }

    /// <summary>Reads up to the end or to the slash before a bass.</summary>
    public static Result<ChordQuality> Parse(ChordTextReader reader)
    {
        var draft = new ChordQualityDraft();
        reader.SkipSpaces();
        int start = reader.Position;
        bool isMajorSeventh = ReadTriad(reader, draft);
        reader.SkipSpaces();
        isMajorSeventh = isMajorSeventh || ReadMajorMark(reader);
        reader.SkipSpaces();
        ReadExtent(reader, draft, isMajorSeventh, isPowerPossible: reader.Position == start);
        return new ChordModifierParser(reader, draft).ReadAll() is { } fault ? fault : draft.Build();
    }

    /// <summary>How far a chord with this number is built up: 7, 9, 11 or 13.</summary>
    internal static ChordExtent ExtentOf(int number) => ChordExtent.Seventh + ((number - 7) / 2);

    internal static bool ReadMajorMark(ChordTextReader reader)
    {
        if (reader.TryReadAny(s_major))
        {
            return true;
        }

        // The short ma must not be taken from madd9.
        bool isShort = reader.StartsWith("ma")
            && !(reader.Position + 2 < reader.Text.Length && char.IsAsciiLetter(reader.Text[reader.Position + 2]));
        return isShort && reader.TryReadAny("ma");
    }

    // Returns true if the word for the triad says that a seventh, if there is one, is major.
    private static bool ReadTriad(ChordTextReader reader, ChordQualityDraft draft)
    {
        if (reader.TryReadAny(s_halfDiminished))
        {
            (draft.Triad, draft.Extent, draft.Seventh) = (TriadKind.Diminished, ChordExtent.Seventh, SeventhKind.Minor);
        }
        else if (reader.TryReadAny(s_diminished) || IsLetterO(reader))
        {
            draft.Triad = TriadKind.Diminished;
        }
        else if (reader.TryReadAny(s_augmented))
        {
            draft.Triad = TriadKind.Augmented;
        }
        else if (ReadMajorMark(reader))
        {
            return true;
        }
        else if (reader.TryReadAny(s_minor))
        {
            draft.Triad = TriadKind.Minor;
        }
        else
        {
            reader.TryReadAny("dominant", "dom");
        }

        return false;
    }

    // The letter o stands for dim, but not as the start of omit.
    private static bool IsLetterO(ChordTextReader reader) => !reader.StartsWith("omit") && reader.TryRead('o');

    private static void ReadExtent(ChordTextReader reader, ChordQualityDraft draft, bool isMajorSeventh, bool isPowerPossible)
    {
        bool isTriangle = reader.TryReadAny(Triangles);
        if (reader.TryReadAny("6/9", "6(9)", "6add9", "69"))
        {
            draft.Extent = ChordExtent.SixthNinth;
            return;
        }

        if (isPowerPossible && reader.TryReadAny("5"))
        {
            draft.Triad = TriadKind.Power;
            return;
        }

        int number = reader.ReadNumber(13, 11, 9, 7, 6, 4, 2);
        bool isMajorAfter = number == 7 && !reader.StartsWith("Ma") && !reader.StartsWith("MA") && reader.TryReadAny("M");
        SetExtent(draft, number == 0 && isTriangle ? 7 : number, isMajorSeventh || isTriangle || isMajorAfter);
    }

    private static void SetExtent(ChordQualityDraft draft, int number, bool isMajorSeventh)
    {
        switch (number)
        {
            case 2 or 4:
                draft.Added = draft.Added.With(ChordDegree.Of(number));
                break;
            case 6:
                draft.Extent = ChordExtent.Sixth;
                break;
            case >= 7:
                draft.Extent = ExtentOf(number);
                draft.Seventh = Seventh(draft, isMajorSeventh);
                break;
        }
    }

    private static SeventhKind Seventh(ChordQualityDraft draft, bool isMajor) =>
        isMajor ? SeventhKind.Major
        : draft.Triad == TriadKind.Diminished && draft.Seventh == SeventhKind.None ? SeventhKind.Diminished
        : SeventhKind.Minor;
}
