using Xunit.Abstractions;

namespace Clampwise.Practice.Tests;

/// <summary>
/// Nobody gets far by guessing: no fixed rule is right in 30 % of 2,000 questions (blind 25). What a log of days would tell is measured
/// beside them and held to two in five: the last one due in a setup can always be told by who knows all dates.
/// </summary>
public class GuesserTests(ITestOutputHelper output)
{
    private const int Wanted = 2000;
    private const double Most = 0.3;
    private const double MostByDates = 0.4;

    private static readonly Lazy<AskedQuestion[]> s_asked = new(() => [.. Enumerable.Range(1, 4).SelectMany(seed => new Apprentice(Shipped.Everything, seed).Practise(60))]);

    [Fact]
    public void No_rule_guesses_names_that_are_read_off_a_shape() => Judge(Guesser.OfNames, Taken(
        asked => asked.Question.Direction is Direction.SeeShapeSayShapeName or Direction.SeeShapeSaySoundingName));

    [Fact]
    public void No_rule_guesses_names_that_are_heard() => Judge(Guesser.OfNames, Taken(asked => asked.Question.Direction == Direction.HearSayName));

    [Fact]
    public void No_rule_guesses_shapes_that_are_heard() => Judge(Guesser.OfShapes, Taken(asked => asked.Question.Direction.PicksShape()));

    private static AskedQuestion[] Taken(Func<AskedQuestion, bool> test) => [.. s_asked.Value.Where(test).Take(Wanted)];

    private void Judge(Guesser[] guessers, AskedQuestion[] asked)
    {
        (string Name, double Share)[] shares = [.. guessers
            .Select(guesser => (guesser.Name, Share: asked.Average(guesser.ChanceAt)))
            .OrderByDescending(pair => pair.Share)];
        output.WriteLine($"{asked.Length} questions, the other name offered in {asked.Average(one => one.OffersOtherName ? 1.0 : 0):0.000}");
        foreach ((string name, double share) in shares)
        {
            output.WriteLine($"{share:0.000} {name}");
        }

        Assert.Equal(Wanted, asked.Length);
        Assert.All(shares, pair => Assert.True(pair.Share < (Guesser.OfDates.Contains(pair.Name) ? MostByDates : Most), $"{pair.Share:0.000} by '{pair.Name}'"));
    }
}
