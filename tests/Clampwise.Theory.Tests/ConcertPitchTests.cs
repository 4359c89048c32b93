namespace Clampwise.Theory.Tests;

public class ConcertPitchTests
{
    [Theory]
    [InlineData(414.9)]
    [InlineData(466.1)]
    [InlineData(double.NaN)]
    public void Other_concert_pitches_are_refused(double a4) =>
        Assert.StartsWith($"A4 at {a4:0.##} Hz is out of range", ConcertPitch.Of(a4).Fault.Message, StringComparison.Ordinal);
}
