using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Answers queries about every voicing of a setup that a hand can finger. The index is built when it is first needed and kept;
/// it is exhaustive, so what is not found does not exist within its space.
/// </summary>
public sealed class Finder
{
    // A hand has some dozen thinnings: so many voicings hold all hands of a list and what belongs to them.
    private const int VoicingsPerHand = 30;
    private const int FewestLookedAt = 1500;

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

        (int total, IEnumerable<Candidate> best) = Search(query, query.Limit);
        IEnumerable<FoundVoicing> found = best.Select(one => Judged(one.Voicing, query));
        return new FindResult(total, [.. found.OrderBy(one => one.Score)]);
    }

    /// <summary>
    /// The same in whole hands, as many as the query's limit: thinnings fold into their hand. What is refused is refused alike.
    /// </summary>
    public Result<FoundHands> FindHands(VoicingQuery query)
    {
        if (FaultOf(query) is { } fault)
        {
            return fault;
        }

        (int total, IEnumerable<Candidate> best) = Search(query, Math.Max(FewestLookedAt, (int)Math.Min(query.Limit * (long)VoicingsPerHand, int.MaxValue)));
        List<FoldedHand> hands = new HandFolder(Setup.StringCount).Fold(best);
        var chooser = new HandChooser(_rows, Setup.HomeFret.Number, QueryMatcher.SoundingSymbols(Setup, query).Any());
        return new FoundHands(total, [.. chooser.Choose(hands, query.Limit).Select(hand => Unpack(hand, query))]);
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

    private (int Total, IEnumerable<Candidate> Best) Search(VoicingQuery query, int limit)
    {
        var matcher = new QueryMatcher(Setup, query, _rows);
        var best = new BestOf(limit);
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
                    best.Offer(voicing, atBest + matcher.FurtherPoints(voicing));
                }
            }
        }

        return (total, best.InOrder());
    }

    private FoundHand Unpack(FoldedHand hand, VoicingQuery query) => new(
        Judged(hand.Whole.Voicing, query),
        [.. hand.Variants.OrderBy(variant => variant.Whole.Score).Select(variant => Unpack(variant.Whole.Voicing))],
        [.. hand.Thinnings.Concat(hand.Variants.SelectMany(variant => variant.Thinnings)).OrderBy(one => one.Score).Select(one => Unpack(one.Voicing))]);

    private FoundVoicing Judged(PackedVoicing packed, VoicingQuery query) => Judge(Unpack(packed), query).Value;

    private Voicing Unpack(PackedVoicing packed) => Voicing.Create(Setup, packed.ToFretting(Setup.StringCount), allowBehindClamp: true).Value;

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
