using CsCheck;

namespace Clampwise.Theory.Tests;

/// <summary>What holds for every symbol that can be made: from any MusicXML kind with any degrees, and of any reading.</summary>
public class ChordVocabularyTests
{
    private static readonly string[] s_kinds =
    [
        "major", "minor", "augmented", "diminished", "dominant", "major-seventh", "minor-seventh", "diminished-seventh", "augmented-seventh",
        "half-diminished", "major-minor", "major-sixth", "minor-sixth", "dominant-ninth", "major-ninth", "minor-ninth", "dominant-11th",
        "major-11th", "minor-11th", "dominant-13th", "major-13th", "minor-13th", "suspended-second", "suspended-fourth", "power",
    ];

    private static readonly Gen<NoteName> s_names = Gen.Int[-10, 15].Select(NoteName.FromFifths);

    private static readonly Gen<MusicXmlDegree> s_degrees = Gen.Select(
        Gen.Int[2, 13], Gen.Int[-1, 1], Gen.Enum<MusicXmlDegreeType>(), (value, alter, type) => new MusicXmlDegree(value, alter, type));

    private static readonly Gen<Result<ChordQuality>> s_qualities = Gen.Select(
        Gen.Int[0, s_kinds.Length - 1].Select(i => s_kinds[i]), s_degrees.Array[0, 3], (kind, degrees) => MusicXmlKind.ToQuality(kind, degrees));

    private static readonly Gen<ChordSymbol> s_symbols = Gen.Select(s_names, s_qualities.Where(q => q.IsGood), s_names.Nullable())
        .Select((root, quality, bass) => new ChordSymbol(root, quality.Value, bass));

    [Fact]
    public void Print_then_parse_is_the_identity() =>
        s_symbols.Holds(symbol => Assert.Equal(symbol, ChordSymbol.Parse(symbol.ToString()).Value), count: 20_000);

    [Fact]
    public void To_MusicXml_and_back_keeps_the_notes() =>
        s_symbols.Holds(
            symbol =>
            {
                var kind = MusicXmlKind.Of(symbol.Quality);
                // Two fifths, ninths or elevenths at once are more than alter and subtract can tell apart.
                bool isPlain = symbol.Quality.Tones.GroupBy(tone => tone.Number).All(group => group.Count() == 1);
                if (isPlain)
                {
                    Assert.Equal(Notes(symbol.Quality), Notes(MusicXmlKind.ToQuality(kind.Kind, kind.Degrees.AsSpan()).Value));
                }
            },
            count: 2_000);

    [Fact]
    public void Transposing_there_and_back_keeps_the_chord() =>
        Gen.Select(s_symbols, Gen.Int[-24, 24]).Holds((symbol, n) =>
        {
            Assert.NotEqual(ChordLikeness.OtherChord, symbol.TransposedBy(n).TransposedBy(-n).LikenessTo(symbol));
            Assert.Equal(symbol.Root.Class + n, symbol.TransposedBy(n).Root.Class);
        });

    [Fact]
    public void Every_reading_of_every_set_of_tones_prints_and_reads_back()
    {
        foreach (Sonority sonority in EveryTwoToSevenTones())
        {
            Assert.All(sonority.Readings, reading => Assert.Equal(reading.Symbol, ChordSymbol.Parse(reading.Symbol.ToString()).Value));
        }
    }

    [Fact]
    public void Every_reading_explains_every_pitch_and_says_what_is_missing()
    {
        foreach (Sonority sonority in EveryTwoToSevenTones())
        {
            foreach (Reading reading in sonority.Readings)
            {
                Assert.Equal(sonority.Pitches, reading.Tones.Select(tone => tone.Spelled.Pitch));
                Assert.Equal(sonority.Bass!.Value.Class, reading.Symbol.BassClass);
                Assert.All(reading.Tones, tone => Assert.Equal(tone.Pitch.Class, (reading.Symbol.Root + tone.Degree.Interval).Class));
                var sounding = reading.Tones.Select(tone => tone.Degree).ToHashSet();
                Assert.Equal(reading.Symbol.Quality.Tones.Where(tone => !sounding.Contains(tone)), reading.Omitted);
                Assert.DoesNotContain(reading.Omitted, omitted => omitted.Number is 1 or 7);
            }
        }
    }

    [Fact]
    public void Every_reading_is_accepted_as_an_answer_and_the_quick_way_finds_the_first()
    {
        foreach (Sonority sonority in EveryTwoToSevenTones())
        {
            for (int i = 0; i < sonority.Readings.Length; i++)
            {
                Acceptance judged = sonority.Accepts(sonority.Readings[i].Symbol);
                Assert.Equal(i == 0 ? AcceptanceKind.FirstReading : AcceptanceKind.AnotherReading, judged.Kind);
            }

            Assert.Equal(sonority.Readings.FirstOrDefault()?.Symbol, FirstReading.Of(sonority.Pitches.AsSpan()).Symbol);
        }
    }

    private static string Notes(ChordQuality quality) => string.Join(' ', quality.Tones.Select(tone => tone.Semitones).Distinct().Order());

    // The bass below, everything else an octave above it, in no order.
    private static IEnumerable<Sonority> EveryTwoToSevenTones()
    {
        for (int bits = 1; bits < 1 << 11; bits++)
        {
            int[] above = [.. Enumerable.Range(0, 11).Where(bit => (bits >> bit & 1) == 1)];
            if (above.Length <= 6)
            {
                int bass = 40 + (bits % 12);
                yield return Sonority.Read([Pitch.FromMidi(bass), .. above.Reverse().Select(bit => Pitch.FromMidi(bass + 13 + bit))]);
            }
        }
    }
}
