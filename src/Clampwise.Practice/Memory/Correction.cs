using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// What this player's own answers say beyond the memory model: a logistic regression whose features are the model's recall, the time gone and
/// the answers so far, and which begins as the model itself. Each cold answer moves it by observed minus predicted, in the step that
/// the certainty gained so far allows (recursive least squares for logistic regression: Spiegelhalter and Lauritzen 1990, Sequential updating of
/// conditional probabilities on directed graphical structures, Networks 20).
/// </summary>
public sealed record Correction
{
    private const int Size = 5;
    private const int ByRecall = 1;
    private const int ByDays = 2;
    private const double LeastByRecall = 0.2;
    private const double UsualDays = 8;
    private const double UsualRight = 3;
    private const double MostLogit = 5;

    // Older answers count less, since what a player needs changes as the items get older: about the last so many answers count (tried likewise).
    private const double Fading = 1 / 2000.0;
    private const double LeastChance = 0.001;

    // How far the coefficients of different players lie apart: constant, recall, days, right and wrong answers (tried on simulated learners).
    private static readonly double[] s_spreads = [0.7, 0.35, 0.35, 0.5, 0.4];

    private Correction(ImmutableArray<double> weights, ImmutableArray<double> spread) => (Weights, Spread) = (weights, spread);

    /// <summary>The memory model as it is.</summary>
    public static Correction None { get; } = new([0, 1, 0, 0, 0], [.. Enumerable.Range(0, Size * Size).Select(Prior)]);

    /// <summary>The coefficients of the features.</summary>
    public ImmutableArray<double> Weights { get; }

    /// <summary>Their covariance, row by row.</summary>
    public ImmutableArray<double> Spread { get; }

    /// <summary>Coefficients and covariance as they were kept; <see cref="None"/> if they are not of the right number.</summary>
    public static Correction Of(ImmutableArray<double> weights, ImmutableArray<double> spread) =>
        weights.Length == Size && spread.Length == Size * Size ? new Correction(weights, spread) : None;

    /// <summary>The chance that an item is recalled, 0 to 1.</summary>
    /// <param name="item">Its memory.</param>
    /// <param name="days">Practice days since its last answer; on the day itself it is recalled.</param>
    /// <param name="model">The memory model.</param>
    public double Recall(ItemMemory item, int days, Fsrs model)
    {
        Span<double> features = stackalloc double[Size];
        return days <= 0 ? 1 : Chance(Features(item, days, model, features));
    }

    /// <summary>The correction after one more answer to an item.</summary>
    /// <param name="before">Its memory before.</param>
    /// <param name="days">Practice days since the answer before, 1 or more.</param>
    /// <param name="isRight">True if it was right.</param>
    /// <param name="luck">The chance of being right by luck, 0 to 1.</param>
    /// <param name="model">The memory model.</param>
    internal Correction After(ItemMemory before, int days, bool isRight, double luck, Fsrs model)
    {
        Span<double> x = stackalloc double[Size];
        double recall = Chance(Features(before, days, model, x));
        double right = Math.Clamp(luck + ((1 - luck) * recall), LeastChance, 1 - LeastChance);
        // Slope of the log likelihood along the logit, and its expected square.
        double bend = (1 - luck) * recall * (1 - recall);
        double slope = bend * (isRight ? 1 / right : -1 / (1 - right));
        double information = bend * bend / (right * (1 - right));
        Span<double> gain = stackalloc double[Size];
        double along = 0;
        for (int row = 0; row < Size; row++)
        {
            gain[row] = 0;
            for (int column = 0; column < Size; column++)
            {
                gain[row] += Spread[(row * Size) + column] * x[column];
            }

            along += x[row] * gain[row];
        }

        double step = 1 / (1 + (information * along));
        var weights = new double[Size];
        var spread = new double[Size * Size];
        for (int row = 0; row < Size; row++)
        {
            weights[row] = Weights[row] + (gain[row] * slope * step);
            for (int column = 0; column < Size; column++)
            {
                int place = (row * Size) + column;
                double sure = Spread[place] - (gain[row] * gain[column] * information * step);
                spread[place] = sure + (Fading * (Prior(place) - sure));
            }
        }

        // Whatever a few answers seem to say, recall falls with time.
        weights[ByRecall] = Math.Max(weights[ByRecall], LeastByRecall);
        weights[ByDays] = Math.Min(weights[ByDays], 0);
        return new Correction([.. weights], [.. spread]);
    }

    /// <inheritdoc/>
    public bool Equals(Correction? other) =>
        other is not null && Weights.AsSpan().SequenceEqual(other.Weights.AsSpan()) && Spread.AsSpan().SequenceEqual(other.Spread.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => Weights.Aggregate(0, HashCode.Combine);

    private static double Prior(int place) => place / Size == place % Size ? s_spreads[place % Size] * s_spreads[place % Size] : 0;

    private static Span<double> Features(ItemMemory item, int days, Fsrs model, Span<double> into)
    {
        double recall = model.Recall(item.Memory.Stability, days);
        into[0] = 1;
        into[1] = Math.Min(MostLogit, Math.Log(recall / (1 - recall)));
        into[2] = Math.Log(days / UsualDays);
        into[3] = Math.Log((1 + item.RightAnswers) / (1 + UsualRight));
        into[4] = Math.Log(1 + item.Answers - item.RightAnswers);
        return into;
    }

    private double Chance(Span<double> features)
    {
        double logit = 0;
        for (int i = 0; i < Size; i++)
        {
            logit += Weights[i] * features[i];
        }

        return 1 / (1 + Math.Exp(-logit));
    }
}
