namespace Clampwise.Commands;

/// <summary>Finds the word that was meant by a slip of the fingers.</summary>
internal static class Nearest
{
    /// <summary>The candidate with the fewest slips (a letter more, less, other, or two changed over); null if none is near.</summary>
    public static string? To(string typed, IEnumerable<string> candidates)
    {
        string bare = Bare(typed);
        (string Word, int Slips)[] ranked = [.. candidates.Select(word => (word, Slips(bare, Bare(word)))).OrderBy(pair => pair.Item2)];
        return ranked is [var best, ..] && best.Slips <= Math.Max(1, bare.Length / 3) ? best.Word : null;
    }

    /// <summary>What is added to a refusal: the word that was meant, or nothing.</summary>
    public static string Hint(string typed, IEnumerable<string> candidates) => To(typed, candidates) is { } meant ? $", did you mean {meant}?" : "";

    private static string Bare(string word) => word.TrimStart('-').ToLowerInvariant();

    // Optimal string alignment distance (Damerau 1964; Levenshtein 1966): the changing over of two neighbours is one slip.
    private static int Slips(string one, string other)
    {
        int[,] cost = new int[one.Length + 1, other.Length + 1];
        for (int i = 0; i <= one.Length; i++)
        {
            for (int j = 0; j <= other.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Math.Min(
                    Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1,
                    cost[i - 1, j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                {
                    cost[i, j] = Math.Min(cost[i, j], cost[i - 2, j - 2] + 1);
                }
            }
        }

        return cost[one.Length, other.Length];
    }
}
