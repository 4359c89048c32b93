namespace Clampwise.Theory;

/// <summary>Applies MusicXML degrees to the chord of a kind.</summary>
internal static class MusicXmlReader
{
    public static Result<ChordQuality> Change(ChordQuality start, ReadOnlySpan<MusicXmlDegree> degrees)
    {
        var draft = new ChordQualityDraft
        {
            Triad = start.Triad,
            Extent = start.Extent,
            Seventh = start.Seventh,
        };
        foreach (MusicXmlDegree degree in degrees)
        {
            bool isGood = degree.Type switch
            {
                MusicXmlDegreeType.Add => Add(draft, degree),
                MusicXmlDegreeType.Alter => Alter(draft, start, degree),
                _ => Subtract(draft, start, degree),
            };
            if (!isGood)
            {
                return TheoryWords.CannotChangeDegree(degree, start);
            }
        }

        return SettleDiminishedSeventh(draft) ? draft.Build() : TheoryWords.DiminishedSeventhAlone;
    }

    // A diminished seventh stands on a diminished triad, whichever of its degrees was said first.
    private static bool SettleDiminishedSeventh(ChordQualityDraft draft)
    {
        if (draft.Seventh != SeventhKind.Diminished)
        {
            return true;
        }

        bool hasFifth = !draft.Altered.Contains(ChordDegree.Of(5, -1)) && !draft.Omitted.HasNumber(5);
        bool hasMinorThird = draft.Triad == TriadKind.Minor || draft.Omitted.HasNumber(3);
        if (draft.Triad != TriadKind.Diminished && (hasFifth || !hasMinorThird))
        {
            return false;
        }

        draft.Triad = TriadKind.Diminished;
        return true;
    }

    private static bool Add(ChordQualityDraft draft, MusicXmlDegree degree)
    {
        if (degree.Value == 7)
        {
            return draft.Seventh == SeventhKind.None && SetSeventh(draft, degree.Alter - 1);
        }

        // A fifth beside the fifth is an altered one; anything else joins the chord.
        bool isFifth = degree.Value == 5 && Math.Abs(degree.Alter) == 1;
        bool isJoining = (degree.Value, degree.Alter) is (2 or 9, -1 or 0 or 1) or (4 or 11, 0 or 1) or (6 or 13, 0 or -1);
        draft.Altered = isFifth ? draft.Altered.With(ChordDegree.Of(5, degree.Alter)) : draft.Altered;
        draft.Added = isJoining ? draft.Added.With(ChordDegree.Of(degree.Value, degree.Alter)) : draft.Added;
        return isFifth || isJoining;
    }

    private static bool Alter(ChordQualityDraft draft, ChordQuality start, MusicXmlDegree degree)
    {
        ChordDegree? held = start.Tones.Cast<ChordDegree?>().FirstOrDefault(tone => tone!.Value.Number == degree.Value);
        if (held is not { } tone)
        {
            return false;
        }

        int alteration = tone.Alteration + degree.Alter;
        if ((degree.Value, alteration) is (5 or 9, -1 or 1) or (11, 1) or (13, -1))
        {
            draft.Altered = draft.Altered.With(ChordDegree.Of(degree.Value, alteration));
            return true;
        }

        if (degree.Value == 3 && draft.Triad is TriadKind.Major or TriadKind.Minor && alteration is -1 or 0)
        {
            draft.Triad = alteration == 0 ? TriadKind.Major : TriadKind.Minor;
            return true;
        }

        return degree.Value == 7 && SetSeventh(draft, alteration);
    }

    private static bool SetSeventh(ChordQualityDraft draft, int alteration)
    {
        SeventhKind seventh = alteration switch
        {
            0 => SeventhKind.Major,
            -1 => SeventhKind.Minor,
            -2 => SeventhKind.Diminished,
            _ => SeventhKind.None,
        };
        bool hadSixth = draft.Extent is ChordExtent.Sixth or ChordExtent.SixthNinth;
        bool isPossible = seventh != SeventhKind.None && !hadSixth;
        if (isPossible)
        {
            draft.Seventh = seventh;
            draft.Extent = draft.Extent < ChordExtent.Seventh ? ChordExtent.Seventh : draft.Extent;
        }

        return isPossible;
    }

    private static bool Subtract(ChordQualityDraft draft, ChordQuality start, MusicXmlDegree degree)
    {
        bool isPossible = degree.Value is 3 or 5 or 9 or 11 && start.Tones.Any(tone => tone.Number == degree.Value);
        draft.Omitted = isPossible ? draft.Omitted.With(ChordDegree.Of(degree.Value)) : draft.Omitted;
        return isPossible;
    }
}
