namespace Clampwise.Practice;

/// <summary>What was still had on a later day, pooled: first answers of a day to what had been asked on an earlier one, given without choices.</summary>
/// <param name="Right">Those that were right, and without help.</param>
/// <param name="Of">All of them.</param>
public readonly record struct StillHad(int Right, int Of)
{
    /// <summary>The share, 0 to 1; null if there was none.</summary>
    public double? Share => Of > 0 ? (double)Right / Of : null;

    /// <summary>Of first answers of later days.</summary>
    internal static StillHad Among(IEnumerable<Attempt> later)
    {
        Attempt[] free = [.. later.Where(attempt => attempt.Choices == 0 && attempt.Item.Direction.Facts() is { Luck: 0, IsInTime: false })];
        return new StillHad(free.Count(attempt => attempt.IsFree), free.Length);
    }
}
