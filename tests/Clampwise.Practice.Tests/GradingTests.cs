using CsCheck;

namespace Clampwise.Practice.Tests;

public class GradingTests
{
    private static readonly Evidence s_plain = new(true, 0, 0, 0.9, false, 0);

    private static readonly Gen<Evidence> s_evidence = Gen.Select(
        Gen.Bool, Gen.Int[0, 3], Gen.Int[0, 2].Select(quarters => quarters / 4.0), Gen.Double[0.01, 1], Gen.Bool, Gen.Double[-4, 4],
        (correct, hints, guess, recall, first, slow) => new Evidence(correct, hints, guess, recall, first, slow));

    [Fact]
    public void A_right_answer_is_never_missed_and_a_wrong_one_always_is() =>
        s_evidence.Holds(evidence => (Grading.Of(evidence) == Grade.Missed) == !evidence.IsCorrect);

    [Fact]
    public void Nothing_is_instant_at_first_sight() =>
        s_evidence.Holds(evidence => Grading.Of(evidence with { IsFirstSight = true }) != Grade.Instant);

    [Fact]
    public void A_hint_or_more_hesitation_never_raises_the_grade() => s_evidence.Holds(evidence =>
    {
        Grade grade = Grading.Of(evidence);
        return Grading.Of(evidence with { Hints = evidence.Hints + 1 }) <= grade
            && Grading.Of(evidence with { Slowness = evidence.Slowness + 1 }) <= grade;
    });

    [Fact]
    public void Usual_pace_is_steady() => Assert.Equal(Grade.Steady, Grading.Of(s_plain));

    [Fact]
    public void Fast_is_instant_and_slow_is_strained() => Assert.Equal(
        (Grade.Instant, Grade.Strained),
        (Grading.Of(s_plain with { Slowness = -1 }), Grading.Of(s_plain with { Slowness = 1.5 })));

    // R / (R + c (1 - R)) worked by hand: R = .5, c = 1/2 gives 2/3, below .7; R = .9, c = 1/4 gives .973.
    [Theory]
    [InlineData(0.5, 0.5, 2.0 / 3, Grade.Strained)]
    [InlineData(0.9, 0.25, 0.972972972, Grade.Instant)]
    [InlineData(0.3, 0, 1, Grade.Instant)]
    public void A_likely_guess_is_strained_however_fast(double recall, double guess, double known, Grade grade)
    {
        Assert.Equal(known, Grading.KnownGivenRight(recall, guess), 8);
        Assert.Equal(grade, Grading.Of(s_plain with { RecallBefore = recall, GuessChance = guess, Slowness = -1 }));
    }

    [Fact]
    public void The_usual_time_settles_on_the_players_own_median()
    {
        var usual = UsualTime.FirstGuess(Direction.HearSayName);
        var random = new Random(5);
        for (int i = 0; i < 2000; i++)
        {
            // Log-normal with a median of 2 seconds: ln 2 and a spread of .4.
            double normal = Enumerable.Range(0, 12).Sum(_ => random.NextDouble()) - 6;
            usual = usual.After(TimeSpan.FromSeconds(Math.Exp(Math.Log(2) + (0.4 * normal))));
        }

        Assert.InRange(usual.Typical.TotalSeconds, 1.8, 2.2);
        Assert.InRange(Math.Sqrt(usual.Variance), 0.3, 0.5);
    }
}
