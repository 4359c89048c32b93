using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A query made ready for packed voicings of one setup: whether one fits, and how it ranks.</summary>
internal sealed class QueryMatcher
{
    private const int FewestOfDrone = 2;
    private const int Fingers = 4;

    private readonly VoicingQuery _query;
    private readonly RowReader _rows;
    private readonly KeyRanks? _ranks;
    private readonly ChordSymbol[] _symbols;
    private readonly KeyPoints _keys;
    private readonly PitchClass? _root;
    private readonly int _homeFret;
    private readonly MusicalKey _soundingKey;
    private readonly int _position;
    private readonly int _clampFret;
    private readonly double _maxDifficulty;
    private readonly int _keepRinging;
    private readonly int _maxMovement;
    private readonly int[]? _movements;

    public QueryMatcher(Setup setup, VoicingQuery query, RowReader rows, KeyRanks? ranks = null)
    {
        (_query, _rows, _ranks, _homeFret, _soundingKey) = (query, rows, ranks, setup.HomeFret.Number, setup.SoundingKey);
        _position = RankingWeights.PositionFret(setup, query);
        _clampFret = setup.Clamps.Select(clamp => clamp.Fret.Number).DefaultIfEmpty(0).Max();
        _symbols = [.. SoundingSymbols(setup, query)];
        _keys = new KeyPoints(_symbols, query.Degrees, query.Bass);
        _root = AskedRoot(setup, query);
        _maxDifficulty = query.MaxDifficulty ?? double.PositiveInfinity;
        _keepRinging = query.KeepRinging.Strings.Aggregate(0, (bits, number) => bits | (1 << number.IndexAmong(setup.StringCount)));
        _maxMovement = query.MaxMovement ?? int.MaxValue;
        _movements = query.Near is { } near ? Movements(near, rows) : null;
    }

    /// <summary>The names asked for, at concert pitch.</summary>
    public static IEnumerable<ChordSymbol> SoundingSymbols(Setup setup, VoicingQuery query)
    {
        if (query.SoundingName is { } sounding)
        {
            yield return sounding;
        }

        if (query.ShapeName is { } shape)
        {
            yield return shape.TransposedBy(setup.ShapeShift);
        }
    }

    /// <summary>The root asked for, at concert pitch; null if any will do.</summary>
    public static PitchClass? AskedRoot(Setup setup, VoicingQuery query) =>
        SoundingSymbols(setup, query).FirstOrDefault()?.Root.Class ?? query.Degrees?.Root;

    /// <summary>
    /// True if the voicing fits; what it scores at best then, fewer points being better, before <see cref="FurtherPoints"/> are looked at.
    /// </summary>
    public bool Fits(PackedVoicing voicing, out double atBest)
    {
        double difficulty = voicing.Difficulty;
        float key = _keys[voicing.Key];
        atBest = 0.0;
        if (float.IsNaN(key) || difficulty > _maxDifficulty)
        {
            return false;
        }

        Row row = _rows.Read(voicing);
        if (!FitsRow(row) || !FitsEnds(voicing))
        {
            return false;
        }

        int movement = _movements is null ? 0 : Movement(_movements, voicing);
        atBest = difficulty + key + Points(voicing, row) + (movement * RankingWeights.Semitone);
        return movement <= _maxMovement;
    }

    /// <summary>True if it is called by the name asked for though its third is away.</summary>
    public bool LacksThird(PackedVoicing voicing) => _keys[voicing.Key] >= RankingWeights.WithoutThird;

    /// <summary>What is slower to see adds to the score at best: an unfamiliar grip, a muddy bass, the first reading.</summary>
    public double FurtherPoints(PackedVoicing voicing)
    {
        (int lowest, int next) = _rows.LowestTwo(voicing);
        return (FamiliarGrips.Holds(voicing, _rows.StringCount, _homeFret) ? 0.0 : -RankingWeights.Familiar)
            + RankingWeights.OfBass(lowest, next)
            + ReadingPoints(voicing);
    }

    private double ReadingPoints(PackedVoicing voicing)
    {
        if (_ranks is not null)
        {
            return 0.0;
        }

        Span<Pitch> buffer = stackalloc Pitch[StringNumber.Most];
        ReadOnlySpan<Pitch> pitches = _rows.Pitches(voicing, buffer);
        double points = 0.0;
        foreach (ChordSymbol symbol in _symbols)
        {
            points += FirstReading.Of(pitches, _soundingKey).Is(symbol) ? 0.0 : RankingWeights.OfName(Sonority.Read(pitches, _soundingKey).Accepts(symbol).Kind);
        }

        // Without a root asked for, the score at best took the bass for the root.
        bool isRootInBass = _root is not null || FirstReading.Of(pitches, _soundingKey) is { Quality: not null } first && first.Root == first.Bass;
        return isRootInBass ? points : points - RankingWeights.RootInBass;
    }

    private bool FitsRow(Row row) =>
        (row.Ringing & _keepRinging) == _keepRinging
        && (_query.AllowBehindClamp || !row.IsBehind)
        && row.RingingCount >= _query.MinRinging
        && row.RingingCount <= _query.MaxRinging
        && row.SoundingCount >= _query.MinStrings
        && (row.IsUnbroken || !_query.Unbroken)
        && row.Span <= (_query.Span ?? int.MaxValue)
        && (!_query.IsMoveable || (row.RingingCount == 0 && row.Span > 0))
        && (!_query.IsDrone || FitsDrone(row))
        && (_query.Position is not { } position || (row.Lowest >= position.Number && row.Highest is > 0 and var top && top < position.Number + Fingers));

    private bool FitsDrone(Row row) =>
        row.RingingCount >= FewestOfDrone && row.SoundingCount - row.RingingCount >= FewestOfDrone && row.IsUnbroken && row.Lowest > _clampFret;

    // The class of the bass was seen to with the key.
    private bool FitsEnds(PackedVoicing voicing)
    {
        if (_query.Bass?.Exact is null && _query.Top is null)
        {
            return true;
        }

        (int lowest, int highest) = _rows.Extremes(voicing);
        return (_query.Bass is not { } bass || bass.Is(lowest)) && (_query.Top is not { } top || top.Is(highest));
    }

    private double Points(PackedVoicing voicing, Row row) =>
        _rows.RingingPoints[row.Ringing]
        + _rows.MutedPoints[row.Sounding]
        + (Math.Max(0, row.Lowest - _position) * RankingWeights.HandFret)
        + (Math.Max(0, row.Highest - _position - RankingWeights.LowerHalf) * RankingWeights.UpperFret)
        + RankingWeights.Familiar
        + (_ranks is not null ? _ranks[voicing.Key] : _root is null || _root.Value.Number == voicing.BassClass ? RankingWeights.RootInBass : 0.0);

    // The movement of a voicing is that of its pairs of strings, added up.
    private static int[] Movements(Voicing near, RowReader rows)
    {
        int[] from = [.. near.Strings.Select(sounding => VoiceMovement.Midi(sounding.Pitch))];
        return StringPairs.Table(
            (index, stop) => index < from.Length ? default(VoiceMovement).With(from[index], rows.Midi(index, stop)).Total : 0,
            (one, other) => one + other);
    }

    private static int Movement(int[] movements, PackedVoicing voicing)
    {
        int total = 0;
        for (int pair = 0; pair < StringPairs.Count; pair++)
        {
            total += movements[StringPairs.Place(voicing, pair)];
        }

        return total;
    }
}
