using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// What a query's names, degrees and bass say of each bass with each set of pitch classes: whether it fits, and the points for tones
/// of the names that do not sound. Both depend on nothing else; which reading comes first can depend on the exact pitches.
/// </summary>
internal sealed class KeyPoints
{
    private readonly float[] _points = new float[PackedVoicing.KeyCount];

    public KeyPoints(IReadOnlyList<ChordSymbol> symbols, DegreesWanted? degrees, NoteWanted? bass)
    {
        foreach (ChordSymbol symbol in symbols)
        {
            Add(OfName(symbol));
        }

        bool[]? fits = degrees?.FittingClasses();
        for (int key = 0; key < _points.Length; key++)
        {
            (int lowest, int classes) = PackedVoicing.OfKey(key);
            bool isRefused = (fits is not null && !fits[classes]) || (bass is { } wanted && wanted.Class.Number != lowest);
            _points[key] = isRefused ? float.NaN : _points[key];
        }
    }

    /// <summary>The points for a key; not a number if it does not fit.</summary>
    public float this[int key] => _points[key];

    // Every set within the name's tones that holds its bass may fit, and no other can.
    private static float[] OfName(ChordSymbol symbol)
    {
        var points = new float[PackedVoicing.KeyCount];
        Array.Fill(points, float.NaN);
        int bass = symbol.BassClass.Number;
        int all = symbol.Quality.Tones.Aggregate(1 << bass, (bits, degree) => bits | (1 << (symbol.Root.Class + degree.Semitones).Number));
        int above = all & ~(1 << bass);
        var matcher = new ChordMatcher(symbol);
        Span<Pitch> buffer = stackalloc Pitch[PitchClass.Count];
        for (int part = above; part > 0; part = (part - 1) & above)
        {
            int classes = part | (1 << bass);
            ReadOnlySpan<Pitch> pitches = SetReadings.Pitches(bass, classes, buffer);
            float missing = (float)RankingWeights.OfMissing(classes, symbol).Points;
            points[PackedVoicing.KeyOf(bass, classes)] = matcher.Fits(pitches) ? missing
                : matcher.FitsWithoutThird(pitches) ? missing + (float)RankingWeights.WithoutThird
                : float.NaN;
        }

        return points;
    }

    private void Add(float[] others)
    {
        for (int key = 0; key < _points.Length; key++)
        {
            _points[key] += others[key];
        }
    }
}
