using BenchmarkDotNet.Attributes;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Benchmarks;

/// <summary>
/// The voicing space of a setup to fret 14 within four frets. Aims, on one core: enumerated, named and priced in under 150 ms, an
/// answer in under 10 ms, hands without a name or for a key in under 30 ms, an index under 60 MB. The plain enumeration beside it loops over every string and keeps nothing.
/// </summary>
[MemoryDiagnoser]
[ShortRunJob]
public class FinderBenchmarks
{
    private readonly VoicingQuery _byName = new() { SoundingName = ChordSymbol.Parse("A").Value };
    private readonly VoicingQuery _everything = new();
    private Setup _setup = Setup.Open(Tuning.Standard);
    private Finder _finder = new(Setup.Open(Tuning.Standard));
    private VoicingQuery _near = new();

    [Params("standard", "standard + 3-5@2")]
    public string SetupText { get; set; } = "";

    [GlobalSetup]
    public void Prepare()
    {
        _setup = Setup.Parse(SetupText).Value;
        _finder = new Finder(_setup);
        _near = new VoicingQuery { Near = Voicing.OpenStrings(_setup), MinStrings = 4 };
        _ = _finder.Index;
    }

    [Benchmark(Baseline = true)]
    public int Plain_enumeration_without_names_or_prices() => PlainEnumeration.Count(_setup, maxFret: 14, span: 4);

    [Benchmark]
    public int Index_of_all_voicings_priced() => VoicingIndex.Build(_setup).Count;

    [Benchmark]
    public int Index_priced_and_every_chord_named() => new Finder(_setup).Chords(_everything).Length;

    [Benchmark]
    public long Count_by_the_published_rules() => new FrettingCounter().Count(_setup);

    [Benchmark]
    public int Find_by_name() => _finder.Find(_byName).Value.Total;

    [Benchmark]
    public int Hands_by_name() => _finder.FindHands(_byName with { Limit = 5 }).Value.Hands.Length;

    [Benchmark]
    public int Hands_with_nothing_asked() => _finder.FindHands(_everything).Value.Hands.Length;

    [Benchmark]
    public int Page_of_a_key() => _finder.FindKey(_everything).Value.Degrees.Length;

    [Benchmark]
    public int Find_near_to_a_voicing() => _finder.Find(_near).Value.Total;

    [Benchmark]
    public int Find_with_nothing_asked() => _finder.Find(_everything).Value.Total;
}
