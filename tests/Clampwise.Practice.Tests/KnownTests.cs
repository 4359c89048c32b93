namespace Clampwise.Practice.Tests;

public class KnownTests
{
    private static readonly PracticeItem s_item = Examples.Item(Examples.Quay, 0, Direction.SeeShapeSayShapeName);

    // A day is one letter for each answer: r right, w wrong, c right by choice, h right with help; days stand apart by a space.
    [Theory]
    [InlineData("r", false)]
    [InlineData("r r", false)]
    [InlineData("r r r", true)]
    [InlineData("rrr", false)]
    [InlineData("w r r", true)]
    [InlineData("r c c c", false)]
    [InlineData("r h h h", false)]
    [InlineData("c r c r", true)]
    [InlineData("r r r w", false)]
    [InlineData("r r r wr", false)]
    [InlineData("r wr wr", false)]
    [InlineData("r r r w r", true)]
    [InlineData("r r r rw", false)]
    [InlineData("r r r cw c", true)]
    public void Known_is_recalled_freely_on_two_later_days_and_not_missed_since(string days, bool isKnown)
    {
        string[] each = days.Split(' ');
        MemoryState memory = Examples.Remembered(each.SelectMany((day, place) => day.Select((letter, number) => Made(letter, each.Length - place, number))));
        Assert.Equal(isKnown, Known.In(memory, s_item.Key.Shape, s_item.Key.Direction));
        Assert.False(Known.ByBothNames(memory, s_item.Key.Shape));
    }

    [Fact]
    public void Nothing_is_known_of_what_was_never_asked() => Assert.False(Known.Is(null));

    private static Attempt Made(char letter, int daysAgo, int number) =>
        Examples.Attempt(s_item, letter == 'w' ? Grade.Missed : Grade.Steady, daysAgo, number) with { Choices = letter == 'c' ? 4 : 0, Hints = letter == 'h' ? 1 : 0 };
}
