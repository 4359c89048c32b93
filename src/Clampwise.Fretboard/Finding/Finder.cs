using System.Collections.Concurrent;
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

    // Of a chord over a bass in a list of many, and for a degree of a key of its own.
    private const int OfEachChord = 12;
    private const int OfEachDegree = 100;
    private const int MostOfManyChords = 200;

    // Chords to strum rather than fragments.
    private const int FewestOfChord = 4;

    private readonly Lazy<VoicingIndex> _index;
    private readonly Fret _highest;
    private readonly RowReader _rows;
    private readonly ConcurrentDictionary<MusicalKey, KeyRanks> _ranks = [];

    /// <summary>A finder for a setup.</summary>
    /// <param name="setup">The setup.</param>
    /// <param name="hand">The hand; a medium one if null.</param>
    /// <param name="neck">The neck; 648 mm if null.</param>
    /// <param name="space">Which frettings to look at; <see cref="FrettingSpace.UsualFor"/> if null.</param>
    public Finder(Setup setup, Hand? hand = null, Neck? neck = null, FrettingSpace? space = null)
    {
        Setup = setup;
        _rows = new RowReader(setup);
        _highest = (space ?? FrettingSpace.UsualFor(setup.StringCount)).MaxFret;
        _index = new Lazy<VoicingIndex>(() => VoicingIndex.Build(setup, hand, neck, space));
    }

    /// <summary>The setup.</summary>
    public Setup Setup { get; }

    /// <summary>All voicings.</summary>
    public VoicingIndex Index => _index.Value;

    /// <summary>
    /// The voicings that fit, counted, and the best of them. Refused: strings that don't exist, more strings than there are, a near
    /// voicing with other strings, a position beyond the frets that are looked at, a difficulty that is no number of points.
    /// </summary>
    public Result<FindResult> Find(VoicingQuery query)
    {
        if (FaultOf(query) is { } fault)
        {
            return fault;
        }

        KeyRanks? ranks = RanksOf(query);
        (int total, IEnumerable<Candidate> best) = Search(new QueryMatcher(In(query), query, _rows, ranks), query.Limit);
        return new FindResult(total, [.. best.Select(one => Judge(one.Voicing, query, ranks)).OrderBy(one => one.Score)]);
    }

    /// <summary>
    /// The same in whole hands, as many as the query's limit: thinnings fold into their hand. What is refused is refused alike. Where any
    /// chord will do, those of the key come first, and no chord crowds out the others.
    /// </summary>
    public Result<FoundHands> FindHands(VoicingQuery query)
    {
        if (FaultOf(query) is { } fault)
        {
            return fault;
        }

        KeyRanks? ranks = RanksOf(query);
        var matcher = new QueryMatcher(In(query), query, _rows, ranks);
        (int total, IEnumerable<Candidate> best) = ranks is not null && query.Limit <= MostOfManyChords
            ? SearchChords(matcher, ranks)
            : Search(matcher, Math.Max(FewestLookedAt, (int)Math.Min(query.Limit * (long)VoicingsPerHand, int.MaxValue)));
        // What lacks its third is no thinning and no variant of what has one, and comes after it.
        var chosen = new List<FoldedHand>();
        foreach (IGrouping<bool, Candidate> part in best.GroupBy(one => matcher.LacksThird(one.Voicing)).OrderBy(part => part.Key))
        {
            List<FoldedHand> hands = new HandFolder(Setup.StringCount).Fold(part);
            chosen.AddRange(new HandChooser(_rows, Setup.HomeFret.Number, isNamed: ranks is null).Choose(hands, query.Limit - chosen.Count));
        }

        return new FoundHands(total, [.. chosen.Select(hand => Unpack(hand, query, ranks))], ranks?.Key);
    }

    /// <summary>
    /// What is worth having for a key: two or three hands for each of its degrees. What a query asks for besides a name holds for all of
    /// them; its limit does not count.
    /// </summary>
    public Result<KeyHands> FindKey(VoicingQuery query)
    {
        if (FaultOf(query) is { } fault)
        {
            return fault;
        }

        query = query with { MinStrings = Math.Max(query.MinStrings, FewestOfChord) };
        Setup setup = In(query);
        KeyRanks ranks = RanksOf(setup);
        var search = new KeySearch(Index, new QueryMatcher(setup, query, _rows, ranks), ranks);
        search.Run(OfEachDegree, KeyRanks.AskedForOnly);
        return new KeyFinder(setup, _rows, search, ranks, hand => Unpack(hand, query, ranks)).Page;
    }

    /// <summary>Why a voicing of the setup ranks where it does for a query; refused if the hand cannot finger it.</summary>
    public Result<FoundVoicing> Judge(Voicing voicing, VoicingQuery query) => Judge(voicing, query, RanksOf(query));

    /// <summary>
    /// The chords that the setup holds by their first names, with how many voicings each has and how hard the easiest is.
    /// </summary>
    public ImmutableArray<ChordCount> Chords(VoicingQuery query)
    {
        Setup setup = In(query);
        var matcher = new QueryMatcher(setup, query, _rows);
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

        return ChordCount.Gather(counts, easiest, new SetReadings(setup.SoundingKey));
    }

    private KeyRanks? RanksOf(VoicingQuery query) =>
        query.IsOpen ? RanksOf(In(query)) : null;

    private KeyRanks RanksOf(Setup setup) => _ranks.GetOrAdd(setup.Key, _ => new KeyRanks(setup));

    // All that is named is named in the key that is asked for.
    private Setup In(VoicingQuery query) => query.Key is { } key ? Setup.In(key) : Setup;

    private (int Total, IEnumerable<Candidate> Best) SearchChords(QueryMatcher matcher, KeyRanks ranks)
    {
        var search = new KeySearch(Index, matcher, ranks);
        search.Run(OfEachChord, KeyRanks.AskedForOnly);
        return (search.Total, search.Kept);
    }

    private (int Total, IEnumerable<Candidate> Best) Search(QueryMatcher matcher, int limit)
    {
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

    private Result<FoundVoicing> Judge(Voicing voicing, VoicingQuery query, KeyRanks? ranks) =>
        Fingering.Of(voicing, Index.Hand, Index.Neck).Select(fingering =>
            new FoundVoicing(voicing, fingering, FindWords.Reasons(voicing, fingering, query, _rows, ranks)));

    private FoundVoicing Judge(PackedVoicing packed, VoicingQuery query, KeyRanks? ranks) => Judge(Unpack(packed, query), query, ranks).Value;

    private FoundHand Unpack(FoldedHand hand, VoicingQuery query, KeyRanks? ranks) => new(
        Judge(hand.Whole.Voicing, query, ranks),
        [.. hand.Variants.OrderBy(variant => variant.Whole.Score).Select(variant => Unpack(variant.Whole.Voicing, query))],
        [.. hand.Thinnings.Concat(hand.Variants.SelectMany(variant => variant.Thinnings)).OrderBy(one => one.Score).Select(one => Unpack(one.Voicing, query))]);

    private Voicing Unpack(PackedVoicing packed, VoicingQuery query) => Voicing.Create(In(query), packed.ToFretting(Setup.StringCount), allowBehindClamp: true).Value;

    private Fault? FaultOf(VoicingQuery query)
    {
        StringSet missing = query.KeepRinging.Except(StringSet.All(Setup.StringCount));
        int count = query.Near?.Strings.Length ?? Setup.StringCount;
        return missing.Count > 0 ? FretboardWords.NoSuchString(missing.Strings.First().Number, Setup.StringCount)
            : count != Setup.StringCount ? FretboardWords.NearHasOtherStrings(count, Setup.StringCount)
            : query.Limit < 0 ? FretboardWords.NotNegative("the number of voicings to show", query.Limit)
            : query.MinRinging < 0 || query.MinRinging > count ? FretboardWords.OutsideStrings("the number of strings that ring", query.MinRinging, 0, count)
            : query.MinStrings < 1 || query.MinStrings > count ? FretboardWords.OutsideStrings("the number of strings that sound", query.MinStrings, 1, count)
            : query.MaxDifficulty is { } most && !(most >= 0.0 && double.IsFinite(most)) ? FretboardWords.BadDifficulty(most)
            : query.Position is { } position && position > _highest ? FretboardWords.PositionBeyond(position, _highest)
            : null;
    }
}
