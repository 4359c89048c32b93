namespace Clampwise.Theory;

/// <summary>Reads single tones of a chord symbol: added, omitted, altered.</summary>
internal sealed class ChordToneParser(ChordTextReader reader, ChordQualityDraft draft)
{
    /// <summary>Reads an added tone; the word add has been read.</summary>
    public Fault? Add(int start)
    {
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

    /// <summary>Reads a tone to leave out; the word no or omit has been read.</summary>
    public Fault? Omit()
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

    /// <summary>Reads an altered tone; its accidental has been read.</summary>
    public Fault? Alter(int start, int accidental)
    {
        reader.SkipSpaces();
        int number = accidental > 0 ? reader.ReadNumber(11, 9, 5, 4, 2) : reader.ReadNumber(13, 10, 9, 6, 5, 2);
        bool isLonePlus = number == 0 && reader.Text[start] == '+';
        if (number == 0 && !isLonePlus)
        {
            return TheoryWords.ExpectedAlteredTone(reader.Text, start, accidental);
        }

        // A flat tenth is the minor third above a major one, which is written as a sharp ninth here.
        ChordDegree degree = (isLonePlus, number) switch
        {
            (true, _) => ChordDegree.Of(5, 1),
            (_, 10) => ChordDegree.Of(9, 1),
            _ => ChordDegree.Of(number, accidental),
        };
        draft.Altered = draft.Altered.With(degree);
        return null;
    }

    /// <summary>Reads a number that stands apart, in parentheses or after a slash: an added tone.</summary>
    public Fault? AddBare(int start, bool isApart)
    {
        bool isAfterSlash = reader.TryRead('/');
        int number = isApart || isAfterSlash ? reader.ReadNumber(13, 11, 9, 6, 4, 2) : 0;
        if (number == 0)
        {
            reader.GoTo(start);
            return TheoryWords.ExpectedQuality(reader.Text, start);
        }

        draft.Added = draft.Added.With(ChordDegree.Of(number));
        return null;
    }
}
