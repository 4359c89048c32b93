namespace Clampwise.Theory;

/// <content>Added and altered tones, and how far the chord is built up.</content>
internal sealed partial class ChordQualityDraft
{
    // One name for each added or altered tone: without a sixth or seventh all are added, with a seventh the raised and lowered are altered.
    private void SettleTones()
    {
        TakeSixth();
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

    // A sixth or thirteenth added to a triad makes a sixth chord.
    private void TakeSixth()
    {
        DegreeSet rest = Added.Without(ChordDegree.Of(6)).Without(ChordDegree.Of(13));
        Extent = Extent == ChordExtent.Triad && rest != Added ? ChordExtent.Sixth : Extent;
        Added = Extent is ChordExtent.Sixth or ChordExtent.SixthNinth ? rest : Added;
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
}
