using CsCheck;

namespace Clampwise.Theory.Tests;

/// <summary>Names of what sounds. Where no source is named, the expected names are common practice among guitarists.</summary>
public class SonorityTests
{
    private static readonly Gen<Pitch[]> s_voicings = Gen.Int[36, 72].Array[1, 8].Select(midis => midis.Select(Pitch.FromMidi).ToArray());

    [Fact]
    public void A_doubled_tone_changes_no_name() =>
        (from midis in Gen.Int[40, 64].Array[2, 5] from doubled in Gen.Int[0, 4] from octaves in Gen.Int[0, 2] select (midis, doubled, octaves)).Holds((midis, doubled, octaves) =>
        {
            Pitch[] pitches = [.. midis.Select(Pitch.FromMidi)];
            Pitch twin = pitches[doubled % pitches.Length] + (octaves * PitchClass.Count);
            foreach (MusicalKey? key in (MusicalKey?[])[null, MusicalKey.Parse("D").Value])
            {
                Assert.Equal(
                    Sonority.Read(pitches, key).Readings.Select(reading => $"{reading}"),
                    Sonority.Read([.. pitches, twin], key).Readings.Select(reading => $"{reading}"));
            }
        });

    // Shapes that every guitarist knows, in standard tuning.
    [Theory]
    [InlineData("E2 B2 E3 G#3 B3 E4", "E")]
    [InlineData("E2 B2 E3 G3 B3 E4", "Em")]
    [InlineData("E2 A2 E3 A3 C#4 E4", "A/E")]
    [InlineData("F#2 A2 D3 A3 D4 F#4", "D/F#")]
    [InlineData("B2 D3 G3 B3 G4", "G/B")]
    [InlineData("G2 A2 E3 A3 C4 E4", "Am/G")]
    [InlineData("C3 E3 G3 B3 E4", "Cmaj7")]
    [InlineData("E2 C3 E3 G3 B3 E4", "Cmaj7/E")]
    [InlineData("G2 B2 D3 G3 B3 F4", "G7")]
    [InlineData("B2 D#3 A3 B3 F#4", "B7")]
    [InlineData("F#2 A2 D3 A3 C4 F#4", "D7/F#")]
    [InlineData("A2 E3 G3 C4 E4", "Am7")]
    [InlineData("E2 G#3 D4 G4", "E7#9")]
    [InlineData("F#2 C3 E3 A3", "F#m7b5")]
    [InlineData("C3 E3 G#3 C4", "Caug")]
    [InlineData("D3 Ab3 B3 F4", "Ddim7")]
    [InlineData("C3 E3 A3 C4 E4", "Am/C")]
    [InlineData("C3 E3 G3 A3 C4 E4", "C6")]
    [InlineData("G2 F3 A3 C4 F4", "F/G")]
    [InlineData("A2 G3 B3 D4 G4", "G/A")]
    public void Common_shapes(string pitches, string name) => Assert.Equal(name, Read(pitches).Name);

    // What rings when some strings are clamped and others are not: drones of root and fifth under and over a moving chord.
    [Theory]
    [InlineData("E2 B2 E3 A3 B3 E4", "Esus4")]
    [InlineData("E2 A2 E3 A3 B3 E4", "Asus2/E")]
    [InlineData("E2 B2 F#3 A3 B3 E4", "Esus4(add9)")]
    [InlineData("A2 E3 A3 B3 E4", "Asus2")]
    [InlineData("A2 E3 B3 C#4 E4", "Aadd9")]
    [InlineData("A2 C#3 E3 A3 D4", "Aadd4")]
    [InlineData("G2 B2 D3 G3 C4 G4", "Gadd4")]
    [InlineData("C3 E3 G3 D4 E4", "Cadd9")]
    [InlineData("E2 C3 E3 G3 D4 E4", "Cadd9/E")]
    [InlineData("F#2 A2 D3 G3 A3 D4", "Dadd4/F#")]
    [InlineData("E2 B2 F#3 G3 B3 E4", "Em(add9)")]
    [InlineData("E2 B2 E3 G3 A3 E4", "Em(add4)")]
    [InlineData("F#2 C#3 E3 A3 B3 E4", "F#m11")]
    [InlineData("C#3 G#3 B3 E4 F#4", "C#m11")]
    [InlineData("E2 A2 D3 G3 B3 E4", "Em11")]
    [InlineData("B2 F#3 A3 E4", "B7sus4")]
    [InlineData("B2 F#3 B3 E4 F#4", "Bsus4")]
    [InlineData("B2 F#3 B3 D#4 E4", "Badd4")]
    [InlineData("B2 F#3 A3 D#4 E4", "B11")]
    [InlineData("B2 F#3 A3 C#4 E4", "B9sus4")]
    [InlineData("B2 A3 C#4 E4", "A/B")]
    [InlineData("A2 E3 B3 C#4 F#4", "A6/9")]
    [InlineData("D3 F#3 B3 E4", "D6/9")]
    [InlineData("A2 E3 B3 E4 G#4", "E/A")]
    [InlineData("E2 D3 F#3 A3", "D/E")]
    [InlineData("E2 A2 D3 F#3 A3 D4", "D/E")]
    [InlineData("D2 A2 D3 G3 A3 D4", "Dsus4")]
    [InlineData("G2 D3 A3 D4 G4", "Gsus2")]
    [InlineData("E2 B2 E3 A3 C#4 E4", "Aadd9/E")]
    [InlineData("A2 F3 B3 C#4 E4", "A(addb6,add9)")]
    [InlineData("F2 A#2 F#3 C4 D4 F4", "Bb(addb6,add9)/F")]
    public void Ringing_strings(string pitches, string name) => Assert.Equal(name, Read(pitches).Name);

    [Theory]
    [InlineData("", SonorityKind.Silence, "silence", 0)]
    [InlineData("E3", SonorityKind.SingleNote, "the note E3", 0)]
    [InlineData("B3 B3", SonorityKind.SingleNote, "B3 in unison", 0)]
    [InlineData("E2 E3 E4", SonorityKind.Octaves, "E in octaves", 0)]
    [InlineData("E2 B2 E3", SonorityKind.PowerChord, "E5", 1)]
    [InlineData("D2 G2 D3 G3", SonorityKind.PowerChord, "G5/D", 1)]
    [InlineData("C3 E4", SonorityKind.Interval, "major third C-E", 1)]
    [InlineData("A2 C3", SonorityKind.Interval, "minor third A-C", 1)]
    [InlineData("F3 B3", SonorityKind.Interval, "tritone F-B", 0)]
    [InlineData("E2 D3", SonorityKind.Interval, "minor seventh E-D", 0)]
    [InlineData("C3 C#4 D4", SonorityKind.Cluster, "cluster C C# D", 0)]
    [InlineData("E3 F3 F#3 G3", SonorityKind.Cluster, "cluster E F F# G", 0)]
    public void What_no_chord_symbol_says_is_said_in_words(string pitches, SonorityKind kind, string name, int readings)
    {
        Sonority sonority = Read(pitches);
        Assert.Equal((kind, name, readings), (sonority.Kind, sonority.Name, sonority.Readings.Length));
    }

    [Fact]
    public void A_reading_says_degrees_spelling_omitted_and_doubled_tones()
    {
        Reading reading = Read("E2 B2 D3 G#3 E4").Readings[0];
        Assert.Equal("E7", reading.Symbol.ToString());
        Assert.Equal("R=E2 5=B2 b7=D3 3=G#3 R=E4", Explain(reading));
        Assert.Equal("R", reading.Doubled.ToString());
        Assert.True(reading.Omitted.IsEmpty);
        Assert.Equal("5", Read("C3 E3 Bb3").Readings[0].Omitted.ToString());
        Assert.Equal("R=C3 b3=Eb3 5=G3", Explain(Read("C3 D#3 G3").Readings[0]));
        Assert.Equal("9=E2 R=D3 3=F#3 5=A3", Explain(Read("E2 D3 F#3 A3").Readings[0]));
        Assert.True(Read("E2 D3 F#3 A3").Readings[0].IsBassForeign);
    }

    // The names a set can have beside its first are kept: design rules of the house, common practice.
    [Theory]
    [InlineData("A2 E3 G3 C4", "Am7", "C6/A")]
    [InlineData("E2 D3 F#3 A3", "D/E", "E9sus4")]
    [InlineData("E2 B2 E3 A3", "Esus4", "Asus2/E")]
    [InlineData("C3 Eb3 Gb3 A3", "Cdim7", "Adim7/C", "F#dim7/C", "Ebdim7/C")]
    [InlineData("C3 E3 F#3 Bb3", "C7b5", "C7#11", "F#7b5/C", "C9#11")]
    [InlineData("A2 C4 E4 G4 D4", "Am11", "D9sus4/A", "C6/9/A")]
    public void Other_readings_are_kept(string pitches, string first, params string[] others)
    {
        string[] names = [.. Read(pitches).Readings.Select(reading => reading.ToString())];
        Assert.Equal(first, names[0]);
        Assert.All(others, other => Assert.Contains(other, names));
    }

    [Fact]
    public void Moving_every_pitch_moves_every_reading() =>
        Gen.Select(s_voicings, Gen.Int[-24, 24]).Holds((pitches, n) =>
        {
            Sonority here = Sonority.Read(pitches);
            Sonority there = Sonority.Read([.. pitches.Select(pitch => pitch + n)]);
            Assert.Equal(here.Kind, there.Kind);
            Assert.Equal(here.Readings.Select(reading => reading.Symbol.TransposedBy(n)), there.Readings.Select(reading => reading.Symbol));
        });

    [Fact]
    public void The_order_of_the_strings_changes_no_name() =>
        Gen.Select(s_voicings, Gen.Int[0, 7]).Holds((pitches, turn) =>
        {
            int cut = turn % pitches.Length;
            Pitch[] turned = [.. pitches[cut..], .. pitches[..cut]];
            Assert.Equal(Sonority.Read(pitches).Name, Sonority.Read(turned).Name);
        });

    [Fact]
    public void A_doubled_tone_or_an_omitted_fifth_leaves_the_quality_of_a_seventh_chord() =>
        Gen.Select(Gen.Int[40, 51], Gen.Int[0, 3], Gen.OneOf(Gen.Const("7"), Gen.Const("m7"), Gen.Const("maj7"), Gen.Const("m(maj7)"))).Holds((root, doubled, text) =>
        {
            var quality = ChordQuality.Parse(text).Value;
            Pitch[] all = [.. quality.Tones.Select(tone => Pitch.FromMidi(root + tone.Semitones))];
            Assert.Equal(quality, FirstReading.Of([.. all, all[doubled] + 12]).Quality);
            Assert.Equal(quality, FirstReading.Of([all[0], all[1], all[3]]).Quality);
        });

    private static Sonority Read(string pitches) =>
        Sonority.Read([.. pitches.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(text => Pitch.Parse(text).Value)]);

    private static string Explain(Reading reading) => string.Join(' ', reading.Tones.Select(tone => $"{tone.Degree}={tone.Spelled}"));
}
