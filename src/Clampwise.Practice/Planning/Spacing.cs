namespace Clampwise.Practice;

/// <summary>How far apart questions about one shape must stand.</summary>
public static class Spacing
{
    /// <summary>Questions about one shape in different directions stand at least so many apart.</summary>
    public const int Siblings = 8;

    /// <summary>The same item comes again after so many others at the least.</summary>
    public const int SameItem = 4;

    /// <summary>The distance that can be kept with so many shapes to ask about: with fewer than eight, as far apart as they allow.</summary>
    public static int For(int shapes) => Math.Clamp(shapes, 1, Siblings);

    /// <summary>True if an item may follow on questions asked before, the latest last.</summary>
    public static bool Allows(ItemKey next, IReadOnlyList<ItemKey> before, int spacing)
    {
        for (int back = 1; back < Math.Max(spacing, SameItem) && back <= before.Count; back++)
        {
            ItemKey earlier = before[^back];
            int wanted = earlier.Direction == next.Direction ? Math.Min(SameItem, spacing) : spacing;
            if (earlier.Shape == next.Shape && back < wanted)
            {
                return false;
            }
        }

        return true;
    }
}
