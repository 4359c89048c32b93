using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What was answered for what, by name. Rows are what was right, columns what was answered; the last column is 'not known'.</summary>
public sealed class ConfusionMatrix
{
    private readonly int[,] _counts;

    private ConfusionMatrix(ImmutableArray<string> names, int[,] counts) => (Names, _counts) = (names, counts);

    /// <summary>The names, the most often missed first; what is beyond the limit is left out.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>How often the second was answered where the first was right, by their places in <see cref="Names"/>.</summary>
    public int this[int right, int answered] => _counts[right, answered];

    /// <summary>How often it was not known.</summary>
    public int NotKnown(int right) => _counts[right, Names.Length];

    /// <summary>The matrix of some attempts, right answers counted in.</summary>
    public static ConfusionMatrix Of(IEnumerable<Attempt> attempts, int mostNames = 12)
    {
        Attempt[] all = [.. attempts.Where(attempt => attempt.Expected.Length > 0)];
        ImmutableArray<string> names = [.. all.Where(attempt => !attempt.IsCorrect)
            .SelectMany(attempt => attempt.DidNotKnow ? [attempt.Expected] : new[] { attempt.Expected, attempt.Answer })
            .CountBy(name => name).OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key, StringComparer.Ordinal)
            .Take(mostNames).Select(pair => pair.Key)];
        var places = names.Select((name, place) => (name, place)).ToDictionary(pair => pair.name, pair => pair.place, StringComparer.Ordinal);
        var counts = new int[names.Length, names.Length + 1];
        foreach (Attempt attempt in all)
        {
            if (places.TryGetValue(attempt.Expected, out int row) && ColumnOf(attempt, places, row) is { } column)
            {
                counts[row, column]++;
            }
        }

        return new ConfusionMatrix(names, counts);
    }

    // Any right answer stands on the diagonal, in whatever spelling it was given.
    private static int? ColumnOf(Attempt attempt, Dictionary<string, int> places, int row) => attempt switch
    {
        { IsCorrect: true } => row,
        { DidNotKnow: true } => places.Count,
        _ => places.TryGetValue(attempt.Answer, out int column) ? column : null,
    };
}
