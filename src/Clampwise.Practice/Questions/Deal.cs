using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>
/// Deals shapes into tables of a few without looking at which of them is asked, the like ones together: whoever sees one table learns
/// nothing of which one is asked, since each of its shapes brings the very same table.
/// </summary>
/// <param name="size">How many shapes a table has.</param>
/// <param name="likeness">How easily two are taken for each other; the more, the likelier they sit together.</param>
/// <param name="mayMeet">True if two may stand among the same choices.</param>
/// <param name="random">Chance.</param>
internal sealed class Deal(
    int size, Func<DrillVoicing, DrillVoicing, double> likeness, Func<DrillVoicing, DrillVoicing, bool> mayMeet, Random random)
{
    // A little chance keeps the same ones from sitting together every time.
    private const double Chance = 0.4;

    /// <summary>The table of a shape, itself first. It is smaller than wished if too few of the shapes may meet it.</summary>
    /// <param name="subject">The shape.</param>
    /// <param name="shapes">All shapes, it among them, those that must not miss each other first.</param>
    public ImmutableArray<DrillVoicing> TableOf(DrillVoicing subject, IReadOnlyList<DrillVoicing> shapes)
    {
        // Those that are left over by number are left over by lot: were they the least alike, the odd one out would tell.
        HashSet<int> loose = [.. Enumerable.Range(0, shapes.Count).OrderBy(_ => random.Next()).Take(shapes.Count % size)];
        List<DrillVoicing> waiting = [.. shapes.Where((_, index) => !loose.Contains(index))];
        while (waiting.Count > 0)
        {
            List<DrillVoicing> table = TakeTable(waiting[0], waiting);
            if (table.Contains(subject))
            {
                return Filled([subject, .. table.Where(shape => shape != subject)], shapes);
            }
        }

        return Filled([.. TakeTable(subject, [.. shapes])], shapes);
    }

    /// <summary>A table with more from some shapes, drawn by lot, until it is full or none of them may join.</summary>
    public ImmutableArray<DrillVoicing> Filled(ImmutableArray<DrillVoicing> table, IEnumerable<DrillVoicing> shapes)
    {
        DrillVoicing[] mixed = table.Length < size ? [.. shapes] : [];
        random.Shuffle(mixed);
        foreach (DrillVoicing shape in mixed)
        {
            if (table.Length < size && MayJoin(shape, table))
            {
                table = table.Add(shape);
            }
        }

        return table;
    }

    private List<DrillVoicing> TakeTable(DrillVoicing first, List<DrillVoicing> waiting)
    {
        List<DrillVoicing> table = [first];
        waiting.Remove(first);
        foreach (DrillVoicing other in waiting.OrderByDescending(other => likeness(first, other) + (Chance * random.NextDouble())).ToArray())
        {
            if (table.Count < size && MayJoin(other, table))
            {
                table.Add(other);
                waiting.Remove(other);
            }
        }

        return table;
    }

    private bool MayJoin(DrillVoicing shape, IEnumerable<DrillVoicing> table) => table.All(seated => mayMeet(seated, shape) && mayMeet(shape, seated));
}
