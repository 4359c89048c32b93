using Clampwise.Theory;

namespace Clampwise.Practice.Tests;

public class SkillTests
{
    // P = c + (1 - c) / (1 + e^(b - a)): at equal strength half of what luck leaves.
    [Theory]
    [InlineData(0, 0, 0, 0.5)]
    [InlineData(1, 1, 0.5, 0.75)]
    [InlineData(2, 0, 0, 0.88079708)]
    [InlineData(-50, 0, 0.25, 0.25)]
    public void The_chance_has_the_guess_as_its_floor(double rating, double difficulty, double guess, double chance) =>
        Assert.Equal(chance, Skill.Chance(rating, difficulty, guess), 8);

    [Fact]
    public void Ratings_find_the_players_true_strength()
    {
        var random = new Random(8);
        Skill skill = default;
        for (int i = 0; i < 3000; i++)
        {
            double difficulty = (random.NextDouble() * 4) - 2;
            double foreseen = Skill.Chance(skill.Rating, difficulty, 0.25);
            skill = skill.After(random.NextDouble() < Skill.Chance(1.2, difficulty, 0.25), foreseen);
        }

        Assert.InRange(skill.Rating, 0.9, 1.5);
    }

    [Theory]
    [InlineData("", ChordFamily.Major)]
    [InlineData("m", ChordFamily.Minor)]
    [InlineData("5", ChordFamily.Power)]
    [InlineData("sus4", ChordFamily.Suspended)]
    [InlineData("7sus4", ChordFamily.Suspended)]
    [InlineData("add9", ChordFamily.Added)]
    [InlineData("6", ChordFamily.Added)]
    [InlineData("m6", ChordFamily.Added)]
    [InlineData("7", ChordFamily.Dominant)]
    [InlineData("9", ChordFamily.Dominant)]
    [InlineData("m7", ChordFamily.MinorSeventh)]
    [InlineData("maj7", ChordFamily.MajorSeventh)]
    [InlineData("m(maj7)", ChordFamily.MajorSeventh)]
    [InlineData("m7b5", ChordFamily.Diminished)]
    [InlineData("dim7", ChordFamily.Diminished)]
    [InlineData("aug", ChordFamily.Augmented)]
    public void Families(string quality, ChordFamily family) => Assert.Equal(family, ChordFamilies.Of(ChordQuality.Parse(quality).Value));

    [Fact]
    public void Difficulty_rises_with_the_direction_and_the_neighbours_and_knowing_a_sibling_helps()
    {
        PracticeItem seen = Examples.Item(Examples.Lantern, 5, Direction.SeeShapeSayShapeName);
        PracticeItem heard = Examples.Item(Examples.Lantern, 5, Direction.HearSayName);
        Assert.True(ItemDifficulty.Of(heard) > ItemDifficulty.Of(seen));
        double before = Prediction.Known(heard, Examples.Nothing, Examples.Today);
        double after = Prediction.Known(heard, Examples.Remembered([Examples.Attempt(seen, Grade.Steady, 1)]), Examples.Today);
        Assert.InRange(after - before, 0.05, 0.25);
    }

    [Theory]
    [InlineData(0.95, 20)]
    [InlineData(0.74, 13)]
    [InlineData(0.5, 10)]
    public void New_items_come_as_the_first_answers_of_a_later_day_bear(double right, int items)
    {
        MemoryState memory = Examples.Nothing with { FirstAnswers = new FirstAnswers(40, right) };
        Assert.Equal(items, NewItems.Allowance(new PlanRequest(Examples.Harbour, memory, Examples.Today, 1)));
    }
}
