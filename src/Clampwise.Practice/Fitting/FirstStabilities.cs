
namespace Clampwise.Practice;

/// <summary>
/// The stabilities after a first answer, w0 to w3, found one by one before all weights are fitted together: from the second answers
/// alone, drawn towards the defaults where answers are few, and kept in rising order.
/// </summary>
internal static class FirstStabilities
{
    private const double Shrinkage = 10;
    private const int Steps = 60;

    public static FsrsWeights Guess(ReviewHistory history, int to, FsrsSettings settings)
    {
        var model = new Fsrs(FsrsWeights.Default, settings, rounds: false);
        double[] weights = [.. FsrsWeights.Default.Values];
        foreach (Grade grade in Enum.GetValues<Grade>())
        {
            Review[] seconds = [.. history.Items
                .Where(reviews => reviews.Length > 1 && reviews[0].Grade == grade && !reviews[0].IsPrimed && reviews[1].IsLabel && reviews[1].Order < to)
                .Select(reviews => reviews[1])];
            weights[(int)grade - 1] = Best(seconds, weights[(int)grade - 1], model);
        }

        for (int i = 1; i < 4; i++)
        {
            weights[i] = Math.Max(weights[i], weights[i - 1]);
        }

        return FsrsWeights.Create(weights).Value;
    }

    // A golden-section search over the logarithm of stability: the loss has one valley there.
    private static double Best(Review[] seconds, double usual, Fsrs model)
    {
        double low = Math.Log(0.1);
        double high = Math.Log(100);
        double golden = (Math.Sqrt(5) - 1) / 2;
        for (int step = 0; step < Steps; step++)
        {
            double left = high - (golden * (high - low));
            double right = low + (golden * (high - low));
            (low, high) = Loss(seconds, left, usual, model) < Loss(seconds, right, usual, model) ? (low, right) : (left, high);
        }

        return Math.Exp((low + high) / 2);
    }

    private static double Loss(Review[] seconds, double logStability, double usual, Fsrs model)
    {
        double away = logStability - Math.Log(usual);
        return (Shrinkage * away * away / 2) + seconds.Sum(review =>
        {
            double right = Prediction.ChanceOfRight(model.Recall(Math.Exp(logStability), review.Days), review.GuessChance);
            return -Math.Log(Math.Clamp(review.Grade == Grade.Missed ? 1 - right : right, 1e-6, 1));
        });
    }
}
