namespace Clampwise.Theory;

/// <summary>A quality while it is put together; <see cref="Build"/> brings it to its one form.</summary>
internal sealed class ChordQualityDraft
{
    private static readonly ChordDegree s_flatFifth = ChordDegree.Of(5, -1);
    private static readonly ChordDegree s_sharpFifth = ChordDegree.Of(5, 1);
    private static readonly ChordDegree s_third = ChordDegree.Of(3);

    public TriadKind Triad { get; set; }

    public ChordExtent Extent { get; set; }

    public SeventhKind Seventh { get; set; }

    public DegreeSet Altered { get; set; }

    public DegreeSet Added { get; set; }

    public DegreeSet Omitted { get; set; }

    public ChordQuality Build()
    {
        SettleFifth();
        SettleTones();
        Climb();
        StepDownFromAlteredTop();
        SettleSuspension();
        SettlePower();
        return new ChordQuality(Triad, Extent, Seventh, Altered, Added, Omitted);
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
        else if (isFlat || isSharp)
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

    // One name for each added or altered tone: without a sixth or seventh all are added, with a seventh the raised and lowered are altered.
    private void SettleTones()
    {
        DegreeSet fifths = default;
        DegreeSet others = default;
        foreach (ChordDegree degree in Altered | Added)
        {
            if (degree.Number == 5)
            {
                fifths = fifths.With(degree);
            }
            else
            {
                others = others.With(Named(degree));
            }
        }

        (Altered, Added) = (fifths, default);
        foreach (ChordDegree degree in others)
        {
            bool isAltered = degree.Alteration != 0 && Extent != ChordExtent.Triad;
            (Altered, Added) = isAltered ? (Altered.With(degree), Added) : (Altered, Added.With(degree));
        }
    }

    private ChordDegree Named(ChordDegree degree)
    {
        bool hasSeventh = Extent >= ChordExtent.Seventh;
        int number = (degree.Number, hasSeventh) switch
        {
            (2, _) => 9,
            (4, true) => 11,
            (6, true) => 13,
            (11, false) => degree.Alteration == 0 ? 4 : 11,
            (4, false) => degree.Alteration == 0 ? 4 : 11,
            (13, false) => 6,
            (int same, _) => same,
        };
        return ChordDegree.Of(number, degree.Alteration);
    }

    // A tone added just above the top of the stack is the next step of the stack.
    private void Climb()
    {
        if (Extent == ChordExtent.Triad && TryTake(6))
        {
            Extent = ChordExtent.Sixth;
        }

        Added = Extent is ChordExtent.Sixth or ChordExtent.SixthNinth ? Added.Without(ChordDegree.Of(6)) : Added;
        Extent = Extent == ChordExtent.Sixth && TryTake(9) ? ChordExtent.SixthNinth : Extent;
        Extent = Extent == ChordExtent.Seventh && TryTake(9) ? ChordExtent.Ninth : Extent;
        Extent = Extent == ChordExtent.Ninth && TryTake(11) ? ChordExtent.Eleventh : Extent;
        Extent = Extent == ChordExtent.Eleventh && TryTake(13) ? ChordExtent.Thirteenth : Extent;
        DropDoubles();
    }

    private bool TryTake(int number)
    {
        ChordDegree degree = ChordDegree.Of(number);
        bool isTaken = Added.Contains(degree) && !Altered.HasNumber(number);
        Added = isTaken ? Added.Without(degree) : Added;
        return isTaken;
    }

    private void DropDoubles()
    {
        Added = Added.Without(ChordDegree.Root).Without(ChordDegree.Of(8));
        Added = Extent is ChordExtent.SixthNinth or >= ChordExtent.Ninth ? Added.Without(ChordDegree.Of(9)) : Added;
        Added = Extent >= ChordExtent.Eleventh ? Added.Without(ChordDegree.Of(11)) : Added;
        Added = Extent >= ChordExtent.Thirteenth ? Added.Without(ChordDegree.Of(13)) : Added;
    }

    // A stack whose top tone is altered ends one step lower: 9 with b9 is 7b9.
    private void StepDownFromAlteredTop()
    {
        Extent = Extent == ChordExtent.Thirteenth && Altered.HasNumber(13) ? ChordExtent.Eleventh : Extent;
        Extent = Extent == ChordExtent.Eleventh && Altered.HasNumber(11) ? ChordExtent.Ninth : Extent;
        Extent = Extent == ChordExtent.Ninth && Altered.HasNumber(9) ? ChordExtent.Seventh : Extent;
        Extent = Extent == ChordExtent.SixthNinth && Altered.HasNumber(9) ? ChordExtent.Sixth : Extent;
    }

    private void SettleSuspension()
    {
        if (Triad == TriadKind.Suspended2 && Added.Contains(ChordDegree.Of(4)))
        {
            Triad = TriadKind.Suspended4;
            Added = Added.Without(ChordDegree.Of(4)).With(ChordDegree.Of(9));
        }

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

    private void SettlePower()
    {
        bool isPlain = Extent == ChordExtent.Triad && Altered.IsEmpty && Added.IsEmpty;
        if (Triad == TriadKind.Power && !(isPlain && Omitted.WithoutNumber(3).IsEmpty))
        {
            (Triad, Omitted) = (TriadKind.Major, Omitted.With(s_third));
        }
        else if (isPlain && Triad is TriadKind.Major or TriadKind.Minor or TriadKind.Power && Omitted.Count <= 1)
        {
            bool isPower = isPlain && (Triad == TriadKind.Power || Omitted.Contains(s_third));
            (Triad, Omitted) = isPower ? (TriadKind.Power, default) : (Triad, Omitted);
        }
    }
}
