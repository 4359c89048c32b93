namespace Clampwise.Theory;

/// <summary>A quality while it is put together; <see cref="Build"/> brings it to its one form.</summary>
internal sealed partial class ChordQualityDraft
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
        SpellOutPower();
        SettleOmitted();
        SettleFifth();
        SettleTones();
        JoinSuspensions();
        Climb();
        StepDownFromAlteredTop();
        SettleSuspension();
        SettlePower();
        DropOmittedStrangers();
        return new ChordQuality(Triad, Extent, Seventh, Altered, Added, Omitted);
    }

    // Nothing can be left out that the chord has not.
    private void DropOmittedStrangers()
    {
        var whole = new ChordQuality(Triad, Extent, Seventh, Altered, Added, default);
        Omitted = DegreeSet.Of([.. Omitted.Where(omitted => whole.Tones.Any(tone => tone.Number == omitted.Number))]);
    }
}
