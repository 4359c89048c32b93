using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>The part of a session with one setup.</summary>
/// <param name="Setup">Where the clamps stand.</param>
/// <param name="Items">What is asked in it, in order: one at least.</param>
public sealed record PlannedBlock(Setup Setup, ImmutableArray<PlannedItem> Items)
{
    /// <summary>Questions in their order, cut wherever the clamps move.</summary>
    public static ImmutableArray<PlannedBlock> Cut(IEnumerable<PlannedItem> items)
    {
        var blocks = ImmutableArray.CreateBuilder<PlannedBlock>();
        foreach (PlannedItem planned in items)
        {
            Setup setup = planned.Item.Drill.Setup;
            if (blocks.Count > 0 && blocks[^1].Setup.Equals(setup))
            {
                blocks[^1] = blocks[^1] with { Items = blocks[^1].Items.Add(planned) };
            }
            else
            {
                blocks.Add(new PlannedBlock(setup, [planned]));
            }
        }

        return blocks.ToImmutable();
    }
}
