namespace Clampwise.Theory;

/// <content>Thirds, fifths, suspensions and power chords.</content>
internal sealed partial class ChordQualityDraft
{
    // Without its third a minor chord is no more minor than major, and a fifth left out is neither raised nor lowered.
    private void SettleOmitted()
    {
        if (Seventh == SeventhKind.Diminished)
        {
            return;
        }

        if (Triad == TriadKind.Diminished && (Omitted.HasNumber(3) || Omitted.HasNumber(5)))
        {
            (Triad, Altered) = (TriadKind.Minor, Altered.With(s_flatFifth));
        }

        Triad = Triad == TriadKind.Minor && Omitted.HasNumber(3) ? TriadKind.Major : Triad;
        Triad = Triad == TriadKind.Augmented && Omitted.HasNumber(5) ? TriadKind.Major : Triad;
        Altered = Omitted.HasNumber(5) ? Altered.WithoutNumber(5) : Altered;
    }

    private void SettleFifth()
    {
        (bool isFlat, bool isSharp) = (Altered.Contains(s_flatFifth), Altered.Contains(s_sharpFifth));
        bool isMade = (Triad, isFlat, isSharp) is (TriadKind.Major, false, true) or (TriadKind.Minor, true, false)
            or (TriadKind.Diminished, true, false) or (TriadKind.Augmented, false, true);
        if (isMade)
        {
            Triad = isSharp ? TriadKind.Augmented : TriadKind.Diminished;
            Altered = Altered.WithoutNumber(5);
        }
        else if ((isFlat || isSharp) && Seventh != SeventhKind.Diminished)
        {
            Altered = Triad switch
            {
                TriadKind.Augmented => Altered.With(s_sharpFifth),
                TriadKind.Diminished => Altered.With(s_flatFifth),
                _ => Altered,
            };
            Triad = Triad switch { TriadKind.Augmented => TriadKind.Major, TriadKind.Diminished => TriadKind.Minor, _ => Triad };
        }
    }

    // Second and fourth together are called sus4 with a ninth.
    private void JoinSuspensions()
    {
        bool hasFourth = Added.Contains(ChordDegree.Of(4)) || Added.Contains(ChordDegree.Of(11));
        if (Triad == TriadKind.Suspended2 && hasFourth)
        {
            Triad = TriadKind.Suspended4;
            Added = Added.With(ChordDegree.Of(9));
        }
    }

    private void SettleSuspension()
    {
        if (Triad == TriadKind.Suspended4)
        {
            Added = Added.Without(ChordDegree.Of(4)).Without(ChordDegree.Of(11));
            Extent = Extent == ChordExtent.Eleventh ? ChordExtent.Ninth : Extent;
        }
        else if (Triad == TriadKind.Suspended2)
        {
            Added = Added.Without(ChordDegree.Of(9));
            Extent = Extent switch { ChordExtent.Ninth => ChordExtent.Seventh, ChordExtent.SixthNinth => ChordExtent.Sixth, _ => Extent };
        }

        bool hasNoThird = Triad is TriadKind.Suspended2 or TriadKind.Suspended4;
        Omitted = hasNoThird ? Omitted.WithoutNumber(3) : Omitted;
    }

    // A power chord with anything more is a chord without its third.
    private void SpellOutPower()
    {
        if (Triad == TriadKind.Power)
        {
            (Triad, Omitted) = (TriadKind.Major, Omitted.With(s_third));
        }
    }

    private void SettlePower()
    {
        bool isPlain = Extent == ChordExtent.Triad && Altered.IsEmpty && Added.IsEmpty;
        if (isPlain && Triad == TriadKind.Major && Omitted == DegreeSet.Of(s_third))
        {
            (Triad, Omitted) = (TriadKind.Power, default);
        }
    }
}
