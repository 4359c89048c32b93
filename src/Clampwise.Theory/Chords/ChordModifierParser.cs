namespace Clampwise.Theory;

/// <summary>Reads what follows triad and number: alterations, added and omitted tones, suspensions, a major seventh in parentheses.</summary>
internal sealed class ChordModifierParser(ChordTextReader reader, ChordQualityDraft draft)
{
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
            return Add();
        }

        if (reader.TryReadAny("omit", "Omit", "no", "No"))
        {
            return Omit();
        }

        if (reader.TryReadAny("alt"))
        {
            return Alter(start);
        }

        if (ChordQualityParser.ReadMajorMark(reader) || reader.TryReadAny(ChordQualityParser.Triangles))
        {
            return MajorSeventh(start);
        }

        int accidental = reader.ReadAccidental(isSignAllowed: true);
        return accidental != 0 ? AlterOne(start, accidental) : AddBare(start);
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
        return null;
    }

    private Fault? Add()
    {
        reader.SkipSpaces();
        int start = reader.Position;
        if (ChordQualityParser.ReadMajorMark(reader))
        {
            return MajorSeventh(start);
        }

        int accidental = reader.ReadAccidental(isSignAllowed: true);
        int number = accidental switch
        {
            0 => reader.ReadNumber(13, 11, 9, 6, 4, 2),
            > 0 => reader.ReadNumber(11, 9, 4, 2),
            _ => reader.ReadNumber(13, 9, 6, 2),
        };
        if (number == 0)
        {
            return TheoryWords.ExpectedAddedTone(reader.Text, start);
        }

        draft.Added = draft.Added.With(ChordDegree.Of(number, accidental));
        return null;
    }

    private Fault? Omit()
    {
        reader.SkipSpaces();
        int start = reader.Position;
        int number = reader.ReadNumber(11, 9, 5, 3);
        if (number == 0)
        {
            return TheoryWords.ExpectedOmittedTone(reader.Text, start);
        }

        reader.TryReadAny("rd", "th");
        draft.Omitted = draft.Omitted.With(ChordDegree.Of(number));
        return null;
    }

    private Fault? Alter(int start)
    {
        if (draft.Triad != TriadKind.Major || draft.Extent is not (ChordExtent.Triad or ChordExtent.Seventh) || draft.Seventh == SeventhKind.Major)
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
        (draft.Extent, draft.Seventh) = (ChordExtent.Seventh + ((number - 7) / 2), SeventhKind.Major);
        return null;
    }

    private Fault? AlterOne(int start, int accidental)
    {
        reader.SkipSpaces();
        int number = accidental > 0 ? reader.ReadNumber(11, 9, 5, 4, 2) : reader.ReadNumber(13, 10, 9, 6, 5, 2);
        bool isLonePlus = number == 0 && reader.Text[start] == '+';
        if (number == 0 && !isLonePlus)
        {
            return TheoryWords.ExpectedAlteredTone(reader.Text, start, accidental);
        }

        // A flat tenth is the minor third above a major one, which is written as a sharp ninth here.
        ChordDegree degree = isLonePlus ? ChordDegree.Of(5, 1) : number == 10 ? ChordDegree.Of(9, 1) : ChordDegree.Of(number, accidental);
        draft.Altered = draft.Altered.With(degree);
        return null;
    }

    private Fault? AddBare(int start)
    {
        bool isAfterSlash = reader.TryRead('/');
        int number = _isApart || isAfterSlash ? reader.ReadNumber(13, 11, 9, 6, 4, 2) : 0;
        if (number == 0)
        {
            reader.GoTo(start);
            return TheoryWords.ExpectedQuality(reader.Text, start);
        }

        draft.Added = draft.Added.With(ChordDegree.Of(number));
        return null;
    }
}
