using BenchmarkDotNet.Attributes;
using Clampwise.Fretboard;
using Clampwise.Sound;
using Clampwise.Sound.Files;
using Clampwise.Sound.Performing;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Benchmarks;

/// <summary>What is done at every question: read a chord, describe a setup, render a strum.</summary>
[MemoryDiagnoser]
public class EverydayBenchmarks
{
    private readonly Setup _setup = Setup.Parse("standard + 2-4@2").Value;
    private readonly PluckedGuitar _guitar = new();
    private Voicing _voicing = null!;
    private Performance _strum = Performance.Silence;

    [GlobalSetup]
    public void Prepare()
    {
        _voicing = Voicing.Parse(_setup, "x04600").Value;
        _strum = Perform.Strum(_voicing, StrumDirection.Down, PlayingStyle.Standard);
    }

    [Benchmark]
    public string OneReading() => Sonority.Read(_voicing.Pitches.AsSpan()).Name;

    [Benchmark]
    public string OneSetup() => SetupDescription.Of(Setup.Parse("standard + full@1 + 1-5@3").Value).Resemblance;

    [Benchmark]
    public float[] OneStrum() => Offline.Render(_guitar, _strum);
}
