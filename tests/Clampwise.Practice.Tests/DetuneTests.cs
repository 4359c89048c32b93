using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice.Tests;

public class DetuneTests
{
    private static readonly Setup s_setup = Setup.Parse("standard + 2-4@2").Value;

    [Fact]
    public void Questions_are_the_same_for_the_same_seed_and_ask_for_held_strings_more_often()
    {
        var random = new Random(3);
        DetuneQuestion[] questions = [.. Enumerable.Range(0, 400).Select(_ => DetuneQuestion.Ask(s_setup, DetuneLadder.Start, random))];
        Assert.Equal(questions[0], DetuneQuestion.Ask(s_setup, DetuneLadder.Start, new Random(3)));
        Assert.All(questions, question => Assert.Equal(30.0, Math.Abs(question.Detune.Value)));
        Assert.Equal(6, questions.Select(question => question.String).Distinct().Count());
        Assert.True(questions.Count(question => s_setup.IsHeld(question.String)) > questions.Length / 2);
    }

    [Fact]
    public void The_ladder_goes_down_after_two_right_answers_and_up_after_one_wrong_one()
    {
        var question = new DetuneQuestion(s_setup, StringNumber.Of(3), new Cents(30.0));
        DetuneVerdict right = question.Judge(StringNumber.Of(3), isSharp: true);
        DetuneVerdict half = question.Judge(StringNumber.Of(3), isSharp: false);
        Assert.Equal((true, true, true, false), (right.IsStringRight, right.IsAllRight, half.IsStringRight, half.IsAllRight));
        DetuneLadder ladder = DetuneLadder.Start.After(right);
        Assert.Equal(30.0, ladder.Step.Value);
        ladder = ladder.After(right);
        Assert.Equal(22.0, ladder.Step.Value);
        Assert.Equal(30.0, ladder.After(half).Step.Value);
        Assert.Equal(3.0, Enumerable.Range(0, 50).Aggregate(ladder, (on, _) => on.After(right)).Step.Value);
        Assert.Equal(30.0, DetuneLadder.Start.After(half).Step.Value);
    }
}
