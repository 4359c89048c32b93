namespace Clampwise.Practice.Tests;

public class PlannedBlockTests
{
    [Fact]
    public void A_block_ends_where_the_clamps_move()
    {
        PracticeItem[] quay = [.. Examples.Harbour.Items.Where(item => item.Drill == Examples.Quay).Take(3)];
        PracticeItem[] meadow = [.. Examples.Harbour.Items.Where(item => item.Drill == Examples.Meadow).Take(2)];
        PracticeItem[] order = [.. quay.Take(2), .. meadow, .. quay.Skip(2)];
        SessionPlan plan = new(SessionKind.Daily, [.. order.Select(item => new PlannedItem(item, SessionPart.Due))], [], null);
        Assert.Equal([2, 2, 1], plan.Blocks.Select(block => block.Items.Length));
        Assert.Equal([Examples.Quay.Setup, Examples.Meadow.Setup, Examples.Quay.Setup], plan.Blocks.Select(block => block.Setup));
        Assert.Equal(order, plan.Blocks.SelectMany(block => block.Items).Select(planned => planned.Item));
    }

    [Fact]
    public void Nothing_planned_is_no_block() => Assert.Empty(PlannedBlock.Cut([]));
}
