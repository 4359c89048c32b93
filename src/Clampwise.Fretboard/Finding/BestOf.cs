namespace Clampwise.Fretboard;

/// <summary>Keeps the best so many of what it is offered; equals go by their bits, so that the answer is always the same.</summary>
internal sealed class BestOf(int limit)
{
    private readonly PriorityQueue<PackedVoicing, (double Score, ulong Bits)> _worstFirst =
        new(Comparer<(double Score, ulong Bits)>.Create((one, other) => other.CompareTo(one)));

    private double _worst = double.PositiveInfinity;
    private ulong _worstBits = ulong.MaxValue;

    /// <summary>False if a score as good as this would not be kept.</summary>
    public bool Wants(double score) => _worstFirst.Count < limit || (limit > 0 && score <= _worst);

    public void Offer(PackedVoicing voicing, double score)
    {
        if (_worstFirst.Count < limit)
        {
            _worstFirst.Enqueue(voicing, (score, voicing.Bits));
        }
        else if (limit > 0 && (score, voicing.Bits).CompareTo((_worst, _worstBits)) < 0)
        {
            _worstFirst.DequeueEnqueue(voicing, (score, voicing.Bits));
        }

        if (_worstFirst.TryPeek(out _, out (double Score, ulong Bits) worst))
        {
            (_worst, _worstBits) = worst;
        }
    }

    /// <summary>The best first.</summary>
    public IEnumerable<Candidate> InOrder() =>
        _worstFirst.UnorderedItems.OrderBy(item => item.Priority).Select(item => new Candidate(item.Element, item.Priority.Score));
}
