using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Answers queries about every voicing of a setup that a hand can finger. The index is built when it is first needed and kept;
/// it is exhaustive, so what is not found does not exist within its space.
/// </summary>
public sealed class Finder
{
    private const int VoicingsPerHand = 6;

    private readonly Lazy<VoicingIndex> _index;
    private readonly RowReader _rows;
    private readonly SetReadings _readings = new();

    /// <summary>A finder for a setup.</summary>
    /// <param name="setup">The setup.</param>
    /// <param name="hand">The hand; a medium one if null.</param>
    /// <param name="neck">The neck; 648 mm if null.</param>
    /// <param name="space">Which frettings to look at; <see cref="FrettingSpace.UsualFor"/> if null.</param>
    public Finder(Setup setup, Hand? hand = null, Neck? neck = null, FrettingSpace? space = null)
    {
        Setup = setup;
        _rows = new RowReader(setup);
        _index = new Lazy<VoicingIndex>(() => VoicingIndex.Build(setup, hand, neck, space));
    }

    /// <summary>The setup.</summary>
    public Setup Setup { get; }

    /// <summary>All voicings.</summary>
    public VoicingIndex Index => _index.Value;

    /// <summary>
    /// The voicings that fit, counted, and the best of them. Refused: strings that don't exist, a near voicing with other strings.
    /// </summary>
    public Result<FindResult> Find(VoicingQuery query)
    {
        if (FaultOf(query) is { } fault)
        {
            return fault;
        }

        (int total, IEnumerable<PackedVoicing> best) = Search(query);
        IEnumerable<FoundVoicing> found = best.Select(packed => Unpack(packed, query));
        return new FindResult(total, [.. found.OrderBy(one => one.Score)]);
    }

    /// <summary>
    /// The same in whole hands, as many as the query's limit: thinnings fold into their hand. What is refused is refused alike.
    /// </summary>
    public Result<FoundHands> FindHands(VoicingQuery query)
    {
        // A hand has some dozen thinnings: the best voicings are taken in growing number until they hold enough hands.
        for (int taken = Math.Max(query.Limit, 0) * VoicingsPerHand; ; taken *= VoicingsPerHand)
        {
            if (!Find(query.Limit < 0 ? query : query with { Limit = taken }).TryGet(out FindResult? found, out Fault? fault))
            {
                return fault;
            }

            ImmutableArray<FoundHand> hands = FoundHand.Fold(found.Voicings);
            if (hands.Length >= query.Limit || found.Voicings.Length == found.Total)
            {
                return new FoundHands(found.Total, [.. hands.Take(query.Limit)]);
            }
        }
    }

    /// <summary>Why a voicing of the setup ranks where it does for a query; refused if the hand cannot finger it.</summary>
    public Result<FoundVoicing> Judge(Voicing voicing, VoicingQuery query) =>
        Fingering.Of(voicing, Index.Hand, Index.Neck).Select(fingering =>
            new FoundVoicing(voicing, fingering, FindWords.Reasons(voicing, fingering, query, _rows)));

    /// <summary>
    /// The chords that the setup holds by their first names, with how many voicings each has and how hard the easiest is.
    /// </summary>
    public ImmutableArray<ChordCount> Chords(VoicingQuery query)
    {
        var matcher = new QueryMatcher(Setup, query, _rows);
        var counts = new int[PackedVoicing.KeyCount];
        var easiest = new double[PackedVoicing.KeyCount];
        Array.Fill(easiest, double.PositiveInfinity);
        foreach (PackedVoicing[] part in Index.Parts)
        {
            foreach (PackedVoicing voicing in part)
            {
                if (matcher.Fits(voicing, out _))
                {
                    counts[voicing.Key]++;
                    easiest[voicing.Key] = Math.Min(easiest[voicing.Key], voicing.Difficulty);
                }
            }
        }

        return ChordCount.Gather(counts, easiest, _readings);
    }

    private (int Total, IEnumerable<PackedVoicing> Best) Search(VoicingQuery query)
    {
        var matcher = new QueryMatcher(Setup, query, _rows);
        var best = new BestOf(query.Limit);
        int total = 0;
        foreach (PackedVoicing[] part in Index.Parts)
        {
            foreach (PackedVoicing voicing in part)
            {
                if (!matcher.Fits(voicing, out double atBest))
                {
                    continue;
                }

                total++;
                if (best.Wants(atBest))
                {
                    best.Offer(voicing, atBest + matcher.ReadingPoints(voicing));
                }
            }
        }

        return (total, best.InOrder());
    }

    private FoundVoicing Unpack(PackedVoicing packed, VoicingQuery query) =>
        Judge(Voicing.Create(Setup, packed.ToFretting(Setup.StringCount), allowBehindClamp: true).Value, query).Value;

    private Fault? FaultOf(VoicingQuery query)
    {
        StringSet missing = query.KeepRinging.Except(StringSet.All(Setup.StringCount));
        int count = query.Near?.Strings.Length ?? Setup.StringCount;
        return missing.Count > 0 ? FretboardWords.NoSuchString(missing.Strings.First().Number, Setup.StringCount)
            : count != Setup.StringCount ? FretboardWords.NearHasOtherStrings(count, Setup.StringCount)
            : query.Limit < 0 ? FretboardWords.NotNegative("the number of voicings to show", query.Limit)
            : null;
    }
}
