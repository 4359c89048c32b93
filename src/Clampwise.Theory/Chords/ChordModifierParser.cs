namespace Clampwise.Theory;

/// <summary>
/// Reads what follows triad and number: alterations, added and omitted tones, suspensions, a major seventh in parentheses.
/// </summary>
internal sealed class ChordModifierParser(ChordTextReader reader, ChordQualityDraft draft)
{
    private readonly ChordToneParser _tones = new(reader, draft);
    private int _opened = -1;
    private bool _isApart;

    /// <summary>Reads up to the end or to the slash before a bass, and tells what is wrong.</summary>
    public Fault? ReadAll()
    {
        while (true)
        {
            SkipBetween();
            if (reader.IsAtEnd || (_opened < 0 && reader.IsAtBass))
            {
                return _opened < 0 ? null : TheoryWords.ExpectedClosing(_opened);
            }

            if (ReadOne() is { } fault)
            {
                return fault;
            }
        }
    }

    private void SkipBetween()
    {
        int start = reader.Position;
        while (reader.TryRead(' ') || reader.TryRead(',') || (_opened < 0 && OpenParenthesis()) || (_opened >= 0 && CloseParenthesis()))
        {
        }

        _isApart = _opened >= 0 || reader.Position > start;
    }

    private bool OpenParenthesis()
    {
        bool isOpened = reader.TryRead('(');
        _opened = isOpened ? reader.Position - 1 : _opened;
        return isOpened;
    }

    private bool CloseParenthesis()
    {
        bool isClosed = reader.TryRead(')');
        _opened = isClosed ? -1 : _opened;
        return isClosed;
    }

    private Fault? ReadOne()
    {
        int start = reader.Position;
        if (reader.TryReadAny("suspended", "sus", "Sus"))
        {
            return Suspend(start);
        }

        if (reader.TryReadAny("add", "Add", "ADD"))
        {
            return ReadAdded();
        }

        if (reader.TryReadAny("omit", "Omit", "no", "No"))
        {
            return _tones.Omit();
        }

        if (reader.TryReadAny("alt"))
        {
            return MakeAltered(start);
        }

        bool isSlash = reader.StartsWith("/m") || reader.StartsWith("/M");
        reader.GoTo(isSlash ? start + 1 : start);
        if (ChordQualityParser.ReadMajorMark(reader) || reader.TryReadAny(ChordQualityParser.Triangles))
        {
            return MajorSeventh(start);
        }

        int accidental = reader.ReadAccidental(isSignAllowed: true);
        return accidental != 0 ? _tones.Alter(start, accidental) : _tones.AddBare(start, _isApart);
    }

    private Fault? Suspend(int start)
    {
        if (draft.Triad == TriadKind.Diminished)
        {
            return TheoryWords.SuspendedDiminished(start);
        }

        bool isBoth = reader.TryReadAny("24", "42", "2/4", "4/2") || draft.Triad is TriadKind.Suspended2 or TriadKind.Suspended4;
        bool isSecond = reader.ReadNumber(4, 2) == 2;
        if (draft.Triad == TriadKind.Augmented)
        {
            draft.Altered = draft.Altered.With(ChordDegree.Of(5, 1));
        }

        draft.Triad = isSecond && !isBoth ? TriadKind.Suspended2 : TriadKind.Suspended4;
        draft.Added = isBoth ? draft.Added.With(ChordDegree.Of(9)) : draft.Added;
        return ReadSeventhAfterSuspension();
    }

    // Some write sus7 or sus9 for 7sus4 and 9sus4.
    private Fault? ReadSeventhAfterSuspension()
    {
        int number = draft.Extent == ChordExtent.Triad ? reader.ReadNumber(13, 9, 7) : 0;
        if (number != 0)
        {
            (draft.Extent, draft.Seventh) = (ChordQualityParser.ExtentOf(number), SeventhKind.Minor);
        }

        return null;
    }

    private Fault? ReadAdded()
    {
        reader.SkipSpaces();
        int start = reader.Position;
        return ChordQualityParser.ReadMajorMark(reader) ? MajorSeventh(start) : _tones.Add(start);
    }

    private Fault? MakeAltered(int start)
    {
        bool isDominant = draft.Triad == TriadKind.Major
            && (draft.Extent, draft.Seventh) is (ChordExtent.Triad, _) or (ChordExtent.Seventh, SeventhKind.Minor);
        if (!isDominant)
        {
            return TheoryWords.AltNeedsDominant(start);
        }

        (draft.Extent, draft.Seventh) = (ChordExtent.Seventh, SeventhKind.Minor);
        draft.Altered |= ChordQualityParser.AlteredDominant;
        return null;
    }

    private Fault? MajorSeventh(int start)
    {
        int number = reader.ReadNumber(13, 11, 9, 7);
        if (draft.Seventh != SeventhKind.None || number == 0)
        {
            return number == 0 ? TheoryWords.ExpectedSeventh(reader.Text, reader.Position) : TheoryWords.SecondSeventh(start);
        }

        // What was added to the triad stays: (add9) and (maj7) make a major ninth when they are brought together.
        (draft.Extent, draft.Seventh) = (ChordQualityParser.ExtentOf(number), SeventhKind.Major);
        return null;
    }
}
