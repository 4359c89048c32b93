using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// How far the string of the next question is out: from 30 cents down to 3 as the player gets better. Two right answers in a row go one
/// step down, one wrong answer one step up, which settles where seven answers in ten are right (Levitt, Transformed up-down methods in
/// psychoacoustics, 1971). A value: each answer gives a new one.
/// </summary>
public sealed record DetuneLadder
{
    private const int RightInARow = 2;

    private DetuneLadder(int rung, int row) => (Rung, Row) = (rung, row);

    /// <summary>The steps in cents. 10 is about what musicians tell apart, 3 is better than most tuners' needles settle.</summary>
    public static ImmutableArray<double> Steps { get; } = [30, 22, 16, 12, 9, 7, 5, 4, 3];

    /// <summary>Where everybody starts.</summary>
    public static DetuneLadder Start { get; } = new(0, 0);

    /// <summary>Which step, 0 for the widest.</summary>
    public int Rung { get; }

    /// <summary>How many right answers stand in a row at this step.</summary>
    public int Row { get; }

    /// <summary>How far the next string is out.</summary>
    public Cents Step => new(Steps[Rung]);

    /// <summary>The ladder as it was left, at a step, kept within the steps that there are.</summary>
    public static DetuneLadder At(int rung) => new(Math.Clamp(rung, 0, Steps.Length - 1), 0);

    /// <summary>The ladder after an answer.</summary>
    public DetuneLadder After(DetuneVerdict verdict) =>
        !verdict.IsAllRight ? At(Rung - 1)
        : Row + 1 >= RightInARow ? At(Rung + 1)
        : new DetuneLadder(Rung, Row + 1);
}
