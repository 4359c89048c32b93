namespace Clampwise.Fretboard.Tests;

/// <summary>
/// Fret positions: equal temperament, and the old divisor 17.817 of the trade (each fret takes that part of what remains).
/// </summary>
public class NeckTests
{
    // Worked out from L (1 - 2^(-n/12)) with L = 648 mm, standard arithmetic.
    [Theory]
    [InlineData(0, 0.0)]
    [InlineData(1, 36.37)]
    [InlineData(2, 70.70)]
    [InlineData(5, 162.55)]
    [InlineData(7, 215.51)]
    [InlineData(12, 324.0)]
    [InlineData(24, 486.0)]
    public void Fret_positions(int fret, double millimetres) => Assert.Equal(millimetres, Neck.Usual.MillimetresBetween(Fret.Nut, Fret.Of(fret)), 0.01);

    [Theory]
    [InlineData(628.0)]
    [InlineData(648.0)]
    [InlineData(863.6)]
    public void Frets_lie_where_the_old_divisor_puts_them(double scale)
    {
        var neck = new Neck(scale);
        double remaining = scale;
        for (int fret = 1; fret <= Fret.Last; fret++)
        {
            remaining -= remaining / 17.817;
            Assert.Equal(scale - remaining, neck.MillimetresBetween(Fret.Nut, Fret.Of(fret)), 0.05);
        }
    }

    [Fact]
    public void Distance_is_the_same_both_ways() => Assert.Equal(
        Neck.Usual.MillimetresBetween(Fret.Of(1), Fret.Of(4)), Neck.Usual.MillimetresBetween(Fret.Of(4), Fret.Of(1)));
}
