namespace Clampwise.Fretboard;

/// <summary>
/// A fret counted from the home clamp: 0 lies beside the clamp, a negative one behind it. Only a setup can turn it into a <see
/// cref="Fret"/>.
/// </summary>
/// <param name="Number">Frets above the home clamp, -24 to 24.</param>
public readonly record struct HomeFret(int Number)
{
    /// <inheritdoc/>
    public override string ToString() => Number.ToString();
}
