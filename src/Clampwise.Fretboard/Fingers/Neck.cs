namespace Clampwise.Fretboard;

/// <summary>The lengths of a neck. Fret n lies at L (1 - 2^(-n/12)) from the nut: equal temperament, standard arithmetic.</summary>
public sealed record Neck
{
    /// <summary>A usual scale length in millimetres (common practice, no source: guitars run from some 628 to 650).</summary>
    public const double UsualScaleMillimetres = 648.0;

    /// <summary>A neck of a scale length in millimetres, 300 (a small ukulele) to 1000 (a long bass). Throws outside it.</summary>
    public Neck(double scaleMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(scaleMillimetres, 300.0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(scaleMillimetres, 1000.0);
        ScaleMillimetres = scaleMillimetres;
    }

    /// <summary>A neck of 648 mm.</summary>
    public static Neck Usual { get; } = new(UsualScaleMillimetres);

    /// <summary>Nut to bridge: the sounding length of an open string.</summary>
    public double ScaleMillimetres { get; }

    /// <summary>From one fret to another, whichever is higher.</summary>
    public double MillimetresBetween(Fret one, Fret other) => Math.Abs(Remaining(one.Number) - Remaining(other.Number));

    /// <summary>From a fret to the bridge.</summary>
    internal double Remaining(int fret) => ScaleMillimetres * Math.Pow(2.0, fret / -12.0);
}
