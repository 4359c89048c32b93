namespace Clampwise.Theory;

/// <summary>A distance in pitch: 100 cents are a semitone of equal temperament, 1200 an octave. Zero is the default.</summary>
/// <param name="Value">Cents, positive upward.</param>
public readonly record struct Cents(double Value) : IComparable<Cents>
{
    private const double PerOctave = 1200.0;

    /// <summary>No distance.</summary>
    public static Cents None => default;

    /// <summary>The ratio of frequencies: 2^(cents / 1200).</summary>
    public double Ratio => Math.Pow(2.0, Value / PerOctave);

    /// <summary>From one frequency up to another, both in hertz above 0.</summary>
    public static Cents Between(double fromHertz, double toHertz) => new(PerOctave * Math.Log2(toHertz / fromHertz));

    public static Cents operator +(Cents left, Cents right) => new(left.Value + right.Value);

    public static Cents operator -(Cents left, Cents right) => new(left.Value - right.Value);

    public static Cents operator -(Cents cents) => new(-cents.Value);

    public static bool operator <(Cents left, Cents right) => left.Value < right.Value;

    public static bool operator >(Cents left, Cents right) => left.Value > right.Value;

    public static bool operator <=(Cents left, Cents right) => left.Value <= right.Value;

    public static bool operator >=(Cents left, Cents right) => left.Value >= right.Value;

    /// <inheritdoc/>
    public int CompareTo(Cents other) => Value.CompareTo(other.Value);

    /// <inheritdoc/>
    public override string ToString() => $"{Value:+0.#;-0.#;0} cents";
}
