namespace Clampwise.Fretboard;

/// <summary>
/// Every voicing of a setup that a hand can finger, within a space: eight bytes each, with difficulty, bass and pitch classes. None is
/// left out; fingers behind a clamp are in it, for those who ask for them.
/// </summary>
public sealed class VoicingIndex
{
    // One array for each lowest fretted fret, so that eight strings need no second copy of it all while it is built.
    private readonly PackedVoicing[][] _byLowestFret;

    private VoicingIndex(Setup setup, Hand hand, Neck neck, FrettingSpace space, PackedVoicing[][] byLowestFret)
    {
        (Setup, Hand, Neck, Space) = (setup, hand, neck, space);
        _byLowestFret = byLowestFret;
        Count = byLowestFret.Sum(part => part.Length);
    }

    /// <summary>The setup.</summary>
    public Setup Setup { get; }

    /// <summary>The hand that must be able to finger them.</summary>
    public Hand Hand { get; }

    /// <summary>The neck that it reaches along.</summary>
    public Neck Neck { get; }

    /// <summary>Which frettings were looked at.</summary>
    public FrettingSpace Space { get; }

    /// <summary>How many voicings there are.</summary>
    public int Count { get; }

    /// <summary>What the index takes.</summary>
    public long Bytes => (long)Count * sizeof(ulong);

    /// <summary>All frettings, by the lowest fretted fret.</summary>
    public IEnumerable<Fretting> Frettings => _byLowestFret.SelectMany(part => part).Select(packed => packed.ToFretting(Setup.StringCount));

    internal IReadOnlyList<PackedVoicing[]> Parts => _byLowestFret;

    /// <summary>Enumerates and prices the space.</summary>
    /// <param name="setup">The setup.</param>
    /// <param name="hand">The hand; a medium one if null.</param>
    /// <param name="neck">The neck; 648 mm if null.</param>
    /// <param name="space">Which frettings to look at; <see cref="FrettingSpace.UsualFor"/> if null.</param>
    public static VoicingIndex Build(Setup setup, Hand? hand = null, Neck? neck = null, FrettingSpace? space = null)
    {
        (hand, neck, space) = (hand ?? Hand.Medium, neck ?? Neck.Usual, space ?? FrettingSpace.UsualFor(setup.StringCount));
        var collecting = new Collecting(new PatternTables(setup, space.Span, hand.UsesThumb, clampsBlock: true), hand, neck);
        new SpaceWalk(setup, space).Run(ref collecting);
        collecting.Close();
        return new VoicingIndex(setup, hand, neck, space, [.. collecting.Parts]);
    }

    private struct Collecting(PatternTables tables, Hand hand, Neck neck) : SpaceWalk.IVisitor
    {
        private PatternTable _table = tables.At(0);
        private double _strainScale;

        private readonly List<PackedVoicing> _part = [];

        public List<PackedVoicing[]> Parts { get; } = [];

        public readonly void Close()
        {
            Parts.Add([.. _part]);
            _part.Clear();
        }

        public void Enter(int lowestFret)
        {
            if (lowestFret > 0)
            {
                Close();
            }

            _table = tables.At(lowestFret);
            _strainScale = neck.Remaining(lowestFret) / hand.SpanMillimetres;
        }

        public readonly void Visit(in WalkedFretting fretting)
        {
            double points = _table.LeastPoints(fretting.Slot, _strainScale);
            if (double.IsFinite(points))
            {
                _part.Add(PackedVoicing.Of(fretting, points + fretting.ClampPoints));
            }
        }
    }
}
