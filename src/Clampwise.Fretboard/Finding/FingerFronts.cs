namespace Clampwise.Fretboard;

/// <summary>
/// For each pattern, the assignments that no other one beats in both points and strain: whatever the fret and the hand, the cheapest
/// is one of them.
/// </summary>
internal sealed class FingerFronts
{
    private const int CountBits = 5;
    private const int None = -1;
    private readonly int[] _places;
    private readonly List<Point> _points = [];
    private Front _scratch = new([]);

    /// <param name="size">How many slots there are; 0 to keep nothing.</param>
    public FingerFronts(int size) => _places = new int[size];

    /// <summary>True if the slot's front is kept.</summary>
    public bool Has(int slot) => _places.Length > 0 && _places[slot] != 0;

    /// <summary>Works out the front of a slot's pattern.</summary>
    public void Find(int slot, FingerSearch search, ulong pattern, double extraPoints)
    {
        _scratch.Points.Clear();
        search.Visit(pattern, ref _scratch);
        if (_places.Length == 0)
        {
            _points.Clear();
        }
        else
        {
            int count = _scratch.Points.Count;
            _places[slot] = count == 0 ? None : ((_points.Count + 1) << CountBits) | count;
        }

        foreach (Point point in _scratch.Points)
        {
            _points.Add(point with { Points = point.Points + extraPoints });
        }
    }

    /// <summary>The least points at a position; infinite if no assignment reaches.</summary>
    public double Least(int slot, double strainScale)
    {
        int place = _places.Length == 0 ? (1 << CountBits) | _points.Count : _places[slot];
        if (place == None)
        {
            return double.PositiveInfinity;
        }

        double least = double.PositiveInfinity;
        int start = (place >> CountBits) - 1;
        int end = start + (place & ((1 << CountBits) - 1));
        for (int i = start; i < end; i++)
        {
            least = Math.Min(least, FingerCost.Total(_points[i].Points, _points[i].Strain * strainScale));
        }

        return least;
    }

    private readonly record struct Point(double Points, double Strain);

    private readonly struct Front(List<Point> points) : FingerSearch.IVisitor
    {
        public List<Point> Points { get; } = points;

        public void Visit(ReadOnlySpan<FingerGroup> groups, ReadOnlySpan<Finger> fingers)
        {
            var cost = FingerCost.Of(groups, fingers);
            var point = new Point(cost.Points, cost.Strain);
            for (int i = Points.Count - 1; i >= 0; i--)
            {
                if (Points[i].Points <= point.Points && Points[i].Strain <= point.Strain)
                {
                    return;
                }

                if (Points[i].Points >= point.Points && Points[i].Strain >= point.Strain)
                {
                    Points.RemoveAt(i);
                }
            }

            Points.Add(point);
        }
    }
}
