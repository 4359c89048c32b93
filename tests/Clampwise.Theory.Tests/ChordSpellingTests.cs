using CsCheck;

namespace Clampwise.Theory.Tests;

/// <summary>Roots take the spelling with fewer accidentals in their key: the usual circle of fifths with its fifteen signatures.</summary>
public class ChordSpellingTests
{
    [Theory]
    [InlineData("", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("7sus4", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("m", "C C# D Eb E F F# G G# A Bb B")]
    [InlineData("m7b5", "C C# D Eb E F F# G G# A Bb B")]
    public void Roots(string quality, string roots)
    {
        var symbol = new ChordSymbol(NoteName.Usual(PitchClass.Of(0)), ChordQuality.Parse(quality).Value);
        Assert.Equal(roots, string.Join(' ', Enumerable.Range(0, 12).Select(n => symbol.TransposedBy(n).Root)));
    }

    [Theory]
    [InlineData("C", 1, "Db")]
    [InlineData("Cm", 1, "C#m")]
    [InlineData("C/E", 6, "F#/A#")]
    [InlineData("D/F#", -2, "C/E")]
    [InlineData("D/E", 2, "E/F#")]
    [InlineData("Am/G", 3, "Cm/Bb")]
    [InlineData("E/C", 1, "F/Db")]
    [InlineData("Gbm7", 12, "Gbm7")]
    [InlineData("Cdim7/A", 3, "Ebdim7/C")]
    public void Transposes(string from, int semitones, string to) =>
        Assert.Equal(to, ChordSymbol.Parse(from).Value.TransposedBy(semitones).ToString());

    // What a chart in the key would say (common practice, no source).
    [Theory]
    [InlineData("F#", "F#, G#m, A#m, B, C#, D#m, E#dim, E, C#7/E#")]
    [InlineData("Db", "Db, Ebm, Fm, Gb, Ab, Bbm, Cdim, Cb, Ab7/C")]
    [InlineData("Ab", "Ab, Bbm, Cm, Db, Eb, Fm, Gdim, Gb, Eb7/G")]
    [InlineData("E", "E, F#m, G#m, A, B, C#m, D#dim, D, B7/D#")]
    public void Degrees_are_spelled_in_their_key(string text, string chords)
    {
        MusicalKey key = MusicalKey.Parse(text).Value;
        Assert.All(chords.Split(", "), chord => Assert.Equal(chord, ChordSymbol.Parse(chord).Value.Respelled.In(key).ToString()));
    }

    [Theory]
    [InlineData("C", "C#m7", "C#m7")]
    [InlineData("A", "Ebdim", "D#dim")]
    [InlineData("Eb", "F#", "Gb")]
    [InlineData("G", "C/D#", "C/Eb")]
    [InlineData("E", "C/Eb", "C/D#")]
    [InlineData("D", "D/C#", "D/C#")]
    [InlineData("Db", "C#/B", "Db/Cb")]
    public void What_is_outside_the_key_is_written_as_a_player_would(string key, string chord, string written) =>
        Assert.Equal(written, ChordSymbol.Parse(chord).Value.In(MusicalKey.Parse(key).Value).ToString());

    [Fact]
    public void Degrees_and_letters_agree_in_every_reading_of_every_key()
    {
        MusicalKey[] keys = [.. Enumerable.Range(-7, 15).SelectMany(signature => new[]
            { MusicalKey.Of(NoteName.FromFifths(signature)).Value, MusicalKey.Of(NoteName.FromFifths(signature + 3), isMinor: true).Value })];
        (from midis in Gen.Int[36, 72].Array[2, 6] from key in Gen.Int[0, keys.Length] select (midis, key)).Holds((midis, place) =>
        {
            MusicalKey? key = place == keys.Length ? null : keys[place];
            var sonority = Sonority.Read([.. midis.Select(Pitch.FromMidi)], key);
            Assert.All(sonority.Readings, reading => Assert.All(reading.Tones, tone =>
            {
                NoteName expected = reading.Symbol.Root + tone.Degree.Interval;
                Assert.True(expected == tone.Spelled.Name, $"{reading} in {key}: {tone.Degree} is {tone.Spelled.Name}");
            }));
        });
    }

    [Fact]
    public void A_fifth_up_moves_every_name_in_a_key_by_a_fifth() =>
        (from midis in Gen.Int[36, 72].Array[3, 6] from signature in Gen.Int[-5, 5] select (midis, signature)).Holds((midis, signature) =>
        {
            MusicalKey key = MusicalKey.Of(NoteName.FromFifths(signature)).Value;
            MusicalKey above = MusicalKey.Of(NoteName.FromFifths(signature + 1)).Value;
            Sonority one = Sonority.Read([.. midis.Select(Pitch.FromMidi)], key);
            Sonority other = Sonority.Read([.. midis.Select(midi => Pitch.FromMidi(midi + 7))], above);
            Assert.Equal(one.Readings.Length, other.Readings.Length);
            Assert.All(one.Readings.Zip(other.Readings), pair =>
            {
                Assert.Equal(pair.First.Symbol.Quality, pair.Second.Symbol.Quality);
                Assert.Equal(pair.First.Symbol.Root.Class + 7, pair.Second.Symbol.Root.Class);
                if (key.Contains(pair.First.Symbol.Root.Class))
                {
                    Assert.Equal(pair.First.Symbol.Root + Interval.Of(5), pair.Second.Symbol.Root);
                }
            });
        });

    [Theory]
    [InlineData("C", "E2 B2 E3 G#3 D4")]
    [InlineData("F#", "C#3 E3 G#3 B3")]
    public void A_key_never_makes_a_chord_a_cluster_nor_a_cluster_a_chord(string key, string pitches)
    {
        Pitch[] all = [.. pitches.Split(' ').Select(pitch => Pitch.Parse(pitch).Value)];
        Assert.Equal(Sonority.Read(all).Kind, Sonority.Read(all, MusicalKey.Parse(key).Value).Kind);
    }

    [Fact]
    public void No_house_spelling_needs_a_double_accidental()
    {
        ChordSymbol[] symbols = [.. Enumerable.Range(0, 12).SelectMany(root => Enumerable.Range(0, 12).SelectMany(bass => new[] { "", "m", "dim7", "7b9", "m(maj7)" }
            .Select(quality => ChordSymbol.Of(PitchClass.Of(root), ChordQuality.Parse(quality).Value, PitchClass.Of(bass)))))];
        Assert.All(symbols, symbol => Assert.InRange(Math.Abs(symbol.Root.Accidentals), 0, 1));
        Assert.All(symbols, symbol => Assert.InRange(Math.Abs((symbol.Bass ?? symbol.Root).Accidentals), 0, 1));
    }
}
