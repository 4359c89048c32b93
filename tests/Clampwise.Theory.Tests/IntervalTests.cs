using CsCheck;

namespace Clampwise.Theory.Tests;

/// <summary>Names and sizes of intervals as every handbook of tonal theory tables them (semitones within the octave: standard arithmetic).</summary>
public class IntervalTests
{
    private static readonly Gen<SpelledPitch> s_pitches =
        Gen.Int[-8, 12].SelectMany(fifths => Gen.Int[1, 6].Select(octave => new SpelledPitch(NoteName.FromFifths(fifths), octave)));

    [Theory]
    [InlineData(1, 0, "P1", 0)]
    [InlineData(2, -1, "m2", 1)]
    [InlineData(2, 0, "M2", 2)]
    [InlineData(3, -1, "m3", 3)]
    [InlineData(3, 0, "M3", 4)]
    [InlineData(4, 0, "P4", 5)]
    [InlineData(4, 1, "A4", 6)]
    [InlineData(5, -1, "d5", 6)]
    [InlineData(5, 0, "P5", 7)]
    [InlineData(6, -1, "m6", 8)]
    [InlineData(7, -2, "d7", 9)]
    [InlineData(7, -1, "m7", 10)]
    [InlineData(7, 0, "M7", 11)]
    [InlineData(8, 0, "P8", 12)]
    [InlineData(9, 1, "A9", 15)]
    [InlineData(11, 1, "A11", 18)]
    [InlineData(13, -1, "m13", 20)]
    public void Names_and_sizes(int number, int alteration, string name, int semitones)
    {
        var interval = Interval.Of(number, alteration);
        Assert.Equal(name, interval.ToString());
        Assert.Equal(semitones, interval.Semitones);
        Assert.Equal(alteration, interval.Alteration);
    }

    [Fact]
    public void Adding_and_taking_away_keeps_the_spelling() =>
        Gen.Select(s_pitches, Gen.Int[1, 13], Gen.Int[-1, 1]).Holds((pitch, number, alteration) =>
        {
            var interval = Interval.Of(number, alteration);
            SpelledPitch above = pitch + interval;
            Assert.Equal(pitch, above - interval);
            Assert.Equal(interval.Semitones, above.Midi - pitch.Midi);
            Assert.Equal(interval, Interval.Between(pitch, above));
        });
}
