using BenchmarkDotNet.Attributes;
using Clampwise.Theory;

namespace Clampwise.Benchmarks;

/// <summary>
/// Readings of sounding pitches. The aim for the first reading is under one microsecond without allocation. The first two give the
/// mean over 1,024 random voicings of three to six strings (fixed seed).
/// </summary>
[MemoryDiagnoser]
public class ReadingBenchmarks
{
    private const int Count = 1024;
    private const int Seed = 20;
    private static readonly int[] s_open = [40, 45, 50, 55, 59, 64];
    private readonly string _text = "F#m7b5/E";
    private readonly ChordSymbol _symbol = ChordSymbol.Parse("C7(b9,#11)/E").Value;
    private Pitch[][] _voicings = [];

    [GlobalSetup]
    public void MakeVoicings()
    {
        var random = new Random(Seed);
        _voicings = [.. Enumerable.Range(0, Count).Select(_ => Voicing(random))];
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public int FirstReading_of_a_voicing()
    {
        int chords = 0;
        foreach (Pitch[] voicing in _voicings)
        {
            chords += FirstReading.Of(voicing).Kind == SonorityKind.Chord ? 1 : 0;
        }

        return chords;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public int All_readings_spelled()
    {
        int readings = 0;
        foreach (Pitch[] voicing in _voicings)
        {
            readings += Sonority.Read(voicing).Readings.Length;
        }

        return readings;
    }

    [Benchmark]
    public ChordSymbol Parse_a_symbol() => ChordSymbol.Parse(_text).Value;

    [Benchmark]
    public string Print_a_symbol() => _symbol.ToString();

    private static Pitch[] Voicing(Random random)
    {
        int lowest = random.Next(0, 4);
        int fret = random.Next(0, 9);
        return [.. s_open.Skip(lowest).Select(open => Pitch.FromMidi(open + (random.Next(3) == 0 ? 0 : fret + random.Next(0, 4))))];
    }
}
