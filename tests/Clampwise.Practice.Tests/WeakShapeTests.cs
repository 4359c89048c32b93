namespace Clampwise.Practice.Tests;

/// <summary>Weak, meaning weak.</summary>
public class WeakShapeTests
{
    private const int LongestLine = 60 - 2 - 11;

    // Sixty shapes that are answered right one time in four to nine times in ten, eight times each: the twelve lie nearly half the way from the
    // mean to the truly weakest. More is not to be had while a shape that was right the last time is not called weak.
    [Fact]
    public void The_twelve_are_weaker_than_the_rest()
    {
        var shares = new List<double>();
        for (int seed = 1; seed <= 5; seed++)
        {
            var random = new Random(seed);
            PracticeItem[] items = [.. Shipped.Everything.Items.Where(item => item.Key.Direction == Direction.SeeShapeSayShapeName).Take(60)];
            double[] truth = [.. items.Select(_ => 0.25 + (0.65 * Math.Sqrt(random.NextDouble())))];
            MemoryState memory = Examples.Remembered(items.SelectMany((item, place) => Enumerable.Range(1, 8).Select(time =>
                Examples.Attempt(item, random.NextDouble() < truth[place] ? Grade.Steady : Grade.Missed, 33 - (4 * time), place))));
            ItemKey[] found = [.. WeakShapes.Find(items, memory, Examples.Today, Shipped.Everything).Take(12).Select(weak => weak.Item.Key)];
            double picked = found.Average(key => truth[Array.FindIndex(items, item => item.Key == key)]);
            shares.Add((truth.Average() - picked) / (truth.Average() - truth.Order().Take(12).Average()));
        }

        Assert.InRange(shares.Average(), 0.42, 1);
    }

    [Fact]
    public void Nothing_is_weak_that_the_last_evidence_says_is_known()
    {
        for (int seed = 1; seed <= 3; seed++)
        {
            var apprentice = new Apprentice(Shipped.Everything, seed);
            Assert.NotEmpty(apprentice.Practise(40).ToArray());
            WeakShape[] weak = [.. WeakShapes.Find(Shipped.Everything.Items, apprentice.Memory, Examples.Today + 40, Shipped.Everything)];
            Assert.NotEmpty(weak);
            Assert.All(weak, one => Assert.False(Known.Is(apprentice.Memory.Items[one.Item.Key])));
            Assert.All(weak, one => Assert.True(apprentice.Memory.Items[one.Item.Key].LastGrade < Grade.Steady));
            Assert.All(weak, one => Assert.InRange(one.Line.Length, 1, LongestLine));
            Assert.All(weak, one => Assert.StartsWith($"{one.Item.Key.Direction.Short()}: ", one.Line, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void What_is_asked_often_is_not_weak_for_it()
    {
        PracticeItem seldom = Examples.Item(Examples.Quay, 0, Direction.SeeShapeSayShapeName);
        PracticeItem often = Examples.Item(Examples.Quay, 1, Direction.SeeShapeSayShapeName);
        ShapeKey other = Examples.Quay.Voicings[5].Key;
        Attempt Once(PracticeItem item, Grade grade, int daysAgo) => Examples.Attempt(item, grade, daysAgo) with { ConfusedWith = grade == Grade.Missed ? other : null };
        MemoryState memory = Examples.Remembered(
        [
            .. Enumerable.Range(0, 20).Select(back => Once(often, back % 5 == 0 ? Grade.Missed : Grade.Steady, 40 - (2 * back))),
            Once(often, Grade.Strained, 1),
            .. new[] { Grade.Missed, Grade.Steady, Grade.Missed, Grade.Missed }.Select((grade, place) => Once(seldom, grade, 7 - (2 * place))),
        ]);
        Assert.Equal(seldom, WeakShapes.Find(Examples.Harbour.Items, memory, Examples.Today, Examples.Harbour)[0].Item);
    }

    [Fact]
    public void Ties_stand_in_one_order_whatever_order_the_items_come_in()
    {
        PracticeItem[] items = [.. Examples.Harbour.Items.Where(item => item.Key.Direction == Direction.SeeShapeSayShapeName)];
        MemoryState memory = Examples.Remembered(items.Select(item => Examples.Attempt(item, Grade.Missed, 2)));
        PracticeItem[] Found(IEnumerable<PracticeItem> from) => [.. WeakShapes.Find(from, memory, Examples.Today, Examples.Harbour).Select(weak => weak.Item)];
        Assert.Equal(Found(items), Found(items.Reverse()));
    }
}
