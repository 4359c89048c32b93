using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using Clampwise.Fretboard;
using Clampwise.Sound;
using Clampwise.Sound.Files;
using Clampwise.Sound.Performing;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Benchmarks;

/// <summary>
/// Six strings ringing for four seconds, a hundred times over, stereo at 44.1 kHz on one core, to a WAV file: both voices, complete with
/// body and room, beside fluidsynth without reverb and chorus as a process of its own on the same notes and the same font (what it takes
/// to start and to read the font is some 2 % of its time here). Times real time is 400 s by the mean. Needs fluidsynth and the font
/// TimGM6mb; CLAMPWISE_SF2 names another font.
/// </summary>
public class SoundBenchmarks
{
    private const int Strums = 100;
    private const double StrumSeconds = 4.0;
    private readonly string _folder = Directory.CreateTempSubdirectory("clampwise").FullName;
    private readonly PluckedGuitar _guitar = new();
    private readonly Performance _strum = StrumOf(seconds: StrumSeconds);
    private readonly float[] _block = new float[2 * 353];
    private IInstrument _font = null!;
    private Performance _many = null!;

    private static string Font => Environment.GetEnvironmentVariable("CLAMPWISE_SF2") ?? "/usr/share/sounds/sf2/TimGM6mb.sf2";

    private string Wav => Path.Combine(_folder, "out.wav");

    private string Midi => Path.Combine(_folder, "in.mid");

    [GlobalSetup]
    public void SetUp()
    {
        _font = SoundSystem.LoadInstrument(SoundSettings.Standard with { SoundFontPath = Font }).Value;
        _many = Enumerable.Range(1, Strums - 1).Aggregate(_strum, (all, i) => all.Then(_strum, TimeSpan.FromSeconds(StrumSeconds * i)));
        using FileStream midi = File.Create(Midi);
        StandardMidiFile.Write(midi, _many);
    }

    [GlobalCleanup]
    public void CleanUp() => Directory.Delete(_folder, recursive: true);

    [Benchmark(Baseline = true)]
    public int Fluidsynth_400_seconds()
    {
        using Process process = Process.Start("fluidsynth", ["-ni", "-q", "-R", "0", "-C", "0", "-r", "44100", "-T", "wav", "-F", Wav, Font, Midi]);
        process.WaitForExit();
        return process.ExitCode;
    }

    [Benchmark]
    public long Computed_guitar_400_seconds() => ToFile(_guitar);

    [Benchmark]
    public long SoundFont_400_seconds() => ToFile(_font);

    private long ToFile(IInstrument instrument)
    {
        using FileStream wav = File.Create(Wav);
        return WaveFile.Write(wav, instrument, _many, WaveDepth.Bits16);
    }

    /// <summary>From the key press to the first block for the player, everything compiled.</summary>
    [Benchmark]
    public int Computed_guitar_first_block() => _guitar.Start(_strum, SampleRate.Standard).Read(_block);

    /// <summary>The same with a SoundFont.</summary>
    [Benchmark]
    public int SoundFont_first_block() => _font.Start(_strum, SampleRate.Standard).Read(_block);

    private static Performance StrumOf(double seconds)
    {
        Voicing voicing = Voicing.Parse(Setup.Parse("standard").Value, "022100").Value;
        return Perform.Block(voicing, PlayingStyle.Standard with { Ring = TimeSpan.FromSeconds(seconds) });
    }
}
