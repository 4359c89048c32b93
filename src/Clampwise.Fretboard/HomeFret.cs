namespace Clampwise.Fretboard;

/// <summary>
/// A fret counted from the home clamp: 0 lies beside the clamp, a negative one behind it. Only a setup can turn it into a <see
/// cref="Fret"/>.
/// </summary>
public readonly record struct HomeFret
{
    private HomeFret(int number) => Number = number;

    /// <summary>Frets above the home clamp, -24 to 24.</summary>
    public int Number { get; }

    /// <summary>So many frets above the home clamp; null where no neck is that long.</summary>
    public static HomeFret? Of(int number) => number is >= -Fret.Last and <= Fret.Last ? new HomeFret(number) : null;

    /// <inheritdoc/>
    public override string ToString() => Number.ToString();
}
