using BenchmarkDotNet.Attributes;
using Clampwise.Fretboard;

namespace Clampwise.Benchmarks;

/// <summary>Single voicings, and the largest index: eight strings to the octave.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class FingeringBenchmarks
{
    private readonly Voicing _barre = Voicing.Parse(Setup.Open(Tuning.Standard), "133211").Value;
    private readonly Setup _eightStrings = Setup.Parse("eight string").Value;

    [Benchmark]
    public double Fingering_of_a_barre() => Fingering.Of(_barre).Value.Difficulty;

    [Benchmark]
    public string Explanation_of_a_barre() => string.Join('\n', Explanation.Of(_barre).Lines);

    [Benchmark]
    public long Bytes_of_an_index_of_eight_strings() => VoicingIndex.Build(_eightStrings).Bytes;
}
