namespace Clampwise.Theory.Tests;

/// <summary>What no list of readings may hold, since every name in it is a right answer (common practice, no source).</summary>
public class ForbiddenReadingsTests
{
    // Spread over two octaves with every tone doubled or not, in each inversion. A minor triad over its third is a 6 without its fifth too.
    [Theory]
    [InlineData("")]
    [InlineData("m")]
    [InlineData("dim")]
    public void A_plain_triad_has_one_name(string quality)
    {
        int[] tones = [.. ChordQuality.Parse(quality).Value.Tones.Select(tone => tone.Semitones)];
        foreach (int bass in tones.Where(tone => quality != "m" || tone != 3))
        {
            int[] above = [.. Enumerable.Range(bass + 1, 24).Where(n => tones.Contains(n % PitchClass.Count))];
            for (int choice = 0; choice < 1 << above.Length; choice++)
            {
                int[] sounding = [bass, .. above.Where((_, index) => (choice >> index & 1) == 1)];
                if (sounding.Select(n => n % PitchClass.Count).Distinct().Count() == tones.Length)
                {
                    Reading only = Assert.Single(Sonority.Read([.. sounding.Select(n => Pitch.FromMidi(48 + n))]).Readings);
                    Assert.Equal(("C", quality), (only.Symbol.Root.ToString(), only.Symbol.Quality.ToString()));
                }
            }
        }
    }

    [Fact]
    public void A_minor_triad_over_its_third_is_that_or_a_sixth_without_its_fifth()
    {
        Sonority sonority = Sonority.Read([.. new[] { 48, 52, 57, 60, 64 }.Select(Pitch.FromMidi)]);
        Assert.Equal(["Am/C", "C6"], sonority.Readings.Select(reading => reading.ToString()).Order());
    }

    [Fact]
    public void No_foreign_bass_is_the_third_that_the_chord_lacks() =>
        ForAllReadings(reading => !reading.IsBassForeign || !IsThird(reading) || reading.Symbol.Quality.Tones.Any(tone => tone.Number == 3));

    [Fact]
    public void No_chord_over_a_foreign_bass_lacks_its_fifth() =>
        ForAllReadings(reading => !reading.IsBassForeign || !reading.Omitted.Contains(ChordDegree.Of(5)));

    // A chord's own third, fifth or seventh may be such a note, and the seventh beneath a plain triad: C#/E#, Db7/Cb, C#m(maj7)/B#, Db/Cb.
    [Theory]
    [InlineData("E#")]
    [InlineData("B#")]
    [InlineData("Fb")]
    [InlineData("Cb")]
    public void No_other_bass_is_a_white_key_by_a_black_keys_name(string bass) =>
        ForAllReadings(reading => reading.Symbol.Bass?.ToString() != bass
            || reading.Tones.Any(tone => tone.Spelled.Name == reading.Symbol.Bass && tone.Degree.Number is 3 or 5 or 7 && (!reading.IsBassForeign || (tone.Degree.Number == 7 && reading.Symbol.Quality.IsPlainTriad))));

    [Theory]
    [InlineData("Em7#5", "C", "Em7#5/C")]
    [InlineData("Eb(addb9)", "E", "Eb(addb9)/E")]
    [InlineData("Am6", "Eb", "Am6/Eb")]
    [InlineData("D7(#5,#9)", "F", "D7(#5,#9)/F")]
    [InlineData("Caug", "G#", "Caug/G#")]
    [InlineData("C#", "F", "Db/F")]
    [InlineData("F#", "A#", "F#/A#")]
    [InlineData("Abm", "B", "G#m/B")]
    [InlineData("Db7", "B", "Db7/Cb")]
    [InlineData("Fdim", "B", "Fdim/Cb")]
    [InlineData("Ab", "F#", "Ab/Gb")]
    public void Basses_are_spelled_as_written(string chord, string bass, string expected)
    {
        ChordSymbol symbol = ChordSymbol.Parse($"{chord}/{bass}").Value;
        Assert.Equal(expected, symbol.Respelled.ToString());
    }

    // Every set of tones over every bass.
    private static void ForAllReadings(Func<Reading, bool> isAllowed)
    {
        for (int set = 1; set < 1 << PitchClass.Count; set += 2)
        {
            int[] tones = [.. Enumerable.Range(0, PitchClass.Count).Where(n => (set >> n & 1) == 1)];
            for (int bass = 48; bass < 48 + PitchClass.Count; bass++)
            {
                var sonority = Sonority.Read([.. tones.Select(n => Pitch.FromMidi(bass + n))]);
                Assert.Empty(sonority.Readings.Where(reading => !isAllowed(reading)).Select(reading => reading.ToString()));
            }
        }
    }

    private static bool IsThird(Reading reading) => PitchClass.SemitonesUp(reading.Symbol.Root.Class, reading.Symbol.BassClass) is 3 or 4;
}
