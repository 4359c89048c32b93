namespace Clampwise.Practice.Tests;

/// <summary>Which choices a question offers, and how long.</summary>
public class ChoiceTests
{
    private static readonly QuestionOptions s_chosen = new(OffersNames: true);

    [Fact]
    public void The_other_name_is_offered_in_half_of_the_questions_at_most_and_then_three_of_four_have_theirs()
    {
        AskedQuestion[] asked = [.. new Apprentice(Shipped.Everything, 5).Practise(40)
            .Where(one => one.Question.Direction is Direction.SeeShapeSayShapeName or Direction.SeeShapeSaySoundingName)];
        AskedQuestion[] both = [.. asked.Where(one => one.OffersOtherName)];
        Assert.InRange(both.Length / (double)asked.Length, 0.02, 0.5);
        Assert.All(both, one => Assert.True(Enumerable.Range(0, 4).Count(one.HasOtherNameOf) >= 3, $"{one.Question.Item}: {string.Join(" ", one.Question.Choices.Select(choice => choice.Text))}"));
        Assert.All(both, one => Assert.Single(one.Question.Choices, choice => QuestionMaker
            .Judge(one.Question, new Answer.Chosen(one.Question.Choices.IndexOf(choice)), Examples.Context() with { Repertoire = Shipped.Everything }).Value.IsCorrect));
    }

    [Fact]
    public void A_heard_chord_never_offers_its_other_name_which_would_be_right_too() =>
        Assert.DoesNotContain(Heard(Direction.HearSayName), one => one.OffersOtherName);

    [Fact]
    public void Where_four_shapes_of_a_setup_are_met_the_heard_ones_to_pick_from_are_all_met()
    {
        AskedQuestion[] asked = Heard(Direction.HearPickShape);
        Assert.All(asked, one => Assert.All(Enumerable.Range(0, one.Question.Choices.Length).Where(_ => IsBeyondTheFirst(one)), at => Assert.True(one.IsMet(at))));
        Assert.InRange(asked.Average(one => one.Question.Choices.Length), 3.9, 4);
    }

    [Theory]
    [InlineData(Direction.SeeShapeSayShapeName)]
    [InlineData(Direction.HearPickShape)]
    public void What_was_confused_is_offered_as_a_choice(Direction direction)
    {
        PracticeItem[] items = [.. Enumerable.Range(0, Examples.Quay.Voicings.Length).Select(voicing => Examples.Item(Examples.Quay, voicing, direction))];
        ShapeKey far = items[5].Key.Shape;
        Attempt[] met = [.. items.Select((item, number) => Examples.Attempt(item, Grade.Missed, 5, number))];
        Attempt taken = Examples.Attempt(items[0], Grade.Missed, 1, 99) with { ConfusedWith = far };
        int Offers(MemoryState known) => Enumerable.Range(0, 40).Count(seed =>
            QuestionMaker.Make(items[0], Examples.Context(known, seed, s_chosen)).Choices.Any(choice => ShapeKey.Of(choice.Voicing) == far));
        Assert.InRange(Offers(Examples.Remembered([.. met, taken])), 24, 40);
        Assert.InRange(Offers(Examples.Remembered(met)), 1, 20);
    }

    [Fact]
    public void Choices_go_as_a_shape_gets_steady_and_come_back_after_a_miss()
    {
        PracticeItem item = Examples.Item(Examples.Quay, 1, Direction.SeeShapeSayShapeName);
        AnswerForm After(params Grade[] grades) => QuestionMaker.Make(item, Examples.Context(
            Examples.Remembered(grades.Select((grade, number) => Examples.Attempt(item, grade, 9, number))), options: s_chosen)).Form;
        Assert.Equal(AnswerForm.Choose, After());
        Assert.Equal(AnswerForm.Choose, After(Grade.Strained));
        Assert.Equal(AnswerForm.Name, After(Grade.Strained, Grade.Strained));
        Assert.Equal(AnswerForm.Choose, After(Grade.Strained, Grade.Strained, Grade.Missed));
        Assert.Equal(AnswerForm.Name, After(Grade.Strained, Grade.Strained, Grade.Missed, Grade.Steady));
    }

    [Theory]
    [InlineData(0, Direction.SeeShapeSayShapeName, Grade.Steady)]
    [InlineData(0, Direction.NamePlaceShape, Grade.Steady)]
    [InlineData(4, Direction.SeeShapeSayShapeName, Grade.Strained)]
    [InlineData(0, Direction.HearTwoCompare, Grade.Strained)]
    public void A_right_choice_counts_no_more_than_strained_unless_the_shape_was_once_right_without(int choices, Direction before, Grade expected)
    {
        PracticeItem item = Examples.Item(Examples.Quay, 1, Direction.HearPickShape);
        Attempt[] known = [.. Enumerable.Range(1, 6).Select(number => Examples.Attempt(item, Grade.Steady, 1, number) with { Choices = 4 })];
        Attempt other = Examples.Attempt(item with { Key = item.Key with { Direction = before } }, Grade.Steady, 1, 9) with { Choices = choices };
        MemoryState memory = Examples.Remembered([.. known, other]);
        var plan = new SessionPlan(SessionKind.Daily, [new PlannedItem(item, SessionPart.Due)], [], null);
        var player = new Player(SessionState.Of(plan, default, memory, 1), Examples.World);
        player.Begin();
        player.Answer(Examples.Right(player.State.Open!.Question));
        Assert.Equal(expected, player.State.Outcomes[^1].Attempt.Grade);
    }

    private static AskedQuestion[] Heard(Direction direction) =>
        [.. new Apprentice(Shipped.Everything, 6).Practise(30).Where(one => one.Question.Direction == direction)];

    private static bool IsBeyondTheFirst(AskedQuestion asked) => Enumerable.Range(0, asked.Question.Choices.Length).Count(asked.IsMet) > 1;
}
