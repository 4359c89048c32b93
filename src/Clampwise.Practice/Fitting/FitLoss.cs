using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>How badly weights predict a history: log loss of right and wrong, as in maximum likelihood.</summary>
internal static class FitLoss
{
    private const double Least = 1e-6;

    /// <summary>The weighted mean log loss over the labels of a stretch of time; 0 if there are none.</summary>
    /// <param name="history">The answers.</param>
    /// <param name="model">The model with the weights to judge.</param>
    /// <param name="from">The first answer counted, by order of time.</param>
    /// <param name="to">The first answer not counted any more; the memory stops there too.</param>
    /// <param name="weighsNewerMore">True to let the newest answer weigh four times the oldest.</param>
    public static double Mean(ReviewHistory history, Fsrs model, int from, int to, bool weighsNewerMore)
    {
        double sum = 0;
        double weights = 0;
        foreach ((int order, double loss) in Each(history, model, from, to))
        {
            double weight = weighsNewerMore ? Recency((double)order / to) : 1;
            sum += weight * loss;
            weights += weight;
        }

        return weights > 0 ? sum / weights : 0;
    }

    /// <summary>The log loss of each label of a stretch of time with its place in time, item by item.</summary>
    public static IEnumerable<(int Order, double Loss)> Each(ReviewHistory history, Fsrs model, int from, int to)
    {
        foreach (ImmutableArray<Review> reviews in history.Items)
        {
            Memory memory = default;
            for (int i = 0; i < reviews.Length && reviews[i].Order < to; i++)
            {
                Review review = reviews[i];
                if (review.IsLabel && review.Order >= from)
                {
                    yield return (review.Order, Loss(model.Recall(memory.Stability, review.Days), review));
                }

                memory = Move(memory, review, model, isFirst: i == 0);
            }
        }
    }

    /// <summary>How many labels a stretch of time holds.</summary>
    public static int Labels(ReviewHistory history, int from, int to) =>
        history.Items.Sum(reviews => reviews.Count(review => review.IsLabel && review.Order >= from && review.Order < to));

    private static double Loss(double recall, Review review)
    {
        double right = Math.Clamp(Prediction.ChanceOfRight(recall, review.GuessChance), Least, 1 - Least);
        return -Math.Log(review.Grade == Grade.Missed ? 1 - right : right);
    }

    private static Memory Move(Memory memory, Review review, Fsrs model, bool isFirst) => isFirst
        ? MemoryMove.First(review.Grade, review.IsPrimed, model)
        : MemoryMove.Next(memory, review.Days, review.Grade, review.IsPrimed, model);

    // A quarter at the oldest, rising with the third power (the published optimiser; from memory).
    private static double Recency(double place) => 0.25 + (0.75 * place * place * place);
}
