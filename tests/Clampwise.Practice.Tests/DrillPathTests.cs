namespace Clampwise.Practice.Tests;

public class DrillPathTests
{
    private static readonly Drill[] s_drills =
        [Examples.Drill("one", "standard + 3-5@2", "x00000", "006400"), Examples.Drill("two", "standard + 3-5@2", "005430"), Examples.Drill("three", "standard + 2-4@2", "x04600")];

    private static readonly Repertoire s_all = Repertoire.Of(s_drills);

    private static PracticeItem Item(string drill, int voicing, Direction direction) =>
        s_all.Items.Single(item => item.Drill.Id.ToString() == drill && item.Key == new ItemKey(item.Drill.Voicings[voicing].Key, direction));

    private static IEnumerable<Attempt> Free(PracticeItem item, params int[] daysAgo) => daysAgo.Select((days, index) =>
        Examples.Attempt(item, Grade.Steady, days, (10 * item.Drill.Voicings.IndexOf(item.Subject)) + index));

    private static string Open(params IEnumerable<Attempt>[] attempts) =>
        string.Join(' ', DrillPath.Open(s_drills, Examples.Remembered(attempts.SelectMany(some => some).OrderBy(attempt => attempt.At))).Select(drill => drill.Id));

    [Fact]
    public void To_meet_shapes_opens_nothing_and_to_know_them_by_one_name_neither()
    {
        Assert.Equal("one", Open());
        Assert.Equal("one", Open(Free(Item("one", 0, Direction.SeeShapeSayShapeName), 1), Free(Item("one", 1, Direction.SeeShapeSayShapeName), 1)));
        Assert.Equal("one", Open(Free(Item("one", 0, Direction.SeeShapeSayShapeName), 9, 6, 3), Free(Item("one", 1, Direction.SeeShapeSayShapeName), 9, 6, 3)));
    }

    [Fact]
    public void The_next_one_opens_when_every_shape_is_known_by_both_names_and_only_that_one()
    {
        IEnumerable<Attempt> known = new[] { 0, 1 }.SelectMany(voicing =>
            new[] { Direction.SeeShapeSayShapeName, Direction.SeeShapeSaySoundingName }.SelectMany(direction => Free(Item("one", voicing, direction), 9, 6, 3)));
        Assert.Equal("one two", Open(known));
        MemoryState memory = Examples.Remembered(known.OrderBy(attempt => attempt.At));
        Assert.Equal("three", DrillPath.Next(s_drills, memory)!.Id.ToString());
        Assert.Empty(DrillPath.Unknown(s_drills[0], memory));
        Assert.Single(DrillPath.Unknown(s_drills[1], memory));
    }

    [Fact]
    public void A_drill_that_was_begun_stays_open()
    {
        Assert.Equal("three", Open(Free(Item("three", 0, Direction.SeeShapeSayShapeName), 1)));
    }

    [Fact]
    public void A_shape_of_two_drills_begins_the_first_of_them_alone()
    {
        Drill[] drills = [Examples.Drill("early", "standard + 3-5@2", "006400", "005400"), Examples.Drill("late", "standard + 3-5@2", "006400", "007400")];
        PracticeItem shared = Repertoire.Of(drills).Items.First(item => item.Key.Direction == Direction.SeeShapeSayShapeName);
        Assert.Equal("early", DrillPath.Open(drills, Examples.Remembered(Free(shared, 1))).Single().Id.ToString());
    }
}
