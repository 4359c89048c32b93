using System.Buffers.Binary;
using System.Collections.Immutable;
using Clampwise.Theory;
using NAudio.Dsp;
using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>Reads the samples that a preset uses, each only once, and nothing else of the pool.</summary>
internal static class ZoneReader
{
    private const long MostRegions = 20_000;
    private const long MostSamples = 64_000_000;
    private const int ShortestLoop = 16;
    private const int MiddleC = 60;
    private const int RomSample = 0x8000;

    // Keys that a guitar can sound: E1 below the lowest string of an eight-string one to the last fret of a high tuning.
    private const int LowestKey = 24;
    private const int HighestKey = 112;

    // The specification allows 400 to 50,000 Hz (section 7.10); some files go further.
    private const uint SlowestSampling = 400;
    private const uint FastestSampling = 192_000;

    /// <summary>All playable zones of a preset.</summary>
    public static Result<ImmutableArray<SampleZone>> Read(Stream file, RiffMap map, SoundFontPreset named, Preset preset)
    {
        long count = (preset.Zones ?? []).Sum(zone => (long)(InstrumentOf(zone)?.Zones?.Length ?? 0));
        if (count > MostRegions)
        {
            return SoundFontWords.TooManyRegions(named.Name, count, MostRegions);
        }

        long poolSamples = map.Samples.Length / 2;
        SoundFontRegion[] regions = [.. SoundFontInstrumentResolver.Resolve(preset).Where(region => IsPlayable(region, poolSamples))];
        (uint, uint)[] needed = [.. regions.Select(region => (region.Sample.Start, region.Sample.End)).Distinct()];
        long samples = needed.Sum(extent => (long)extent.Item2 - extent.Item1);
        if (regions.Length == 0 || samples > MostSamples)
        {
            return regions.Length == 0 ? SoundFontWords.NoSamples(named.Name) : SoundFontWords.TooLarge(named.Name, samples, MostSamples);
        }

        var data = needed.ToDictionary(extent => extent, extent => ReadSamples(file, map, extent.Item1, extent.Item2));
        return regions.Select(region => ZoneOf(region, data[(region.Sample.Start, region.Sample.End)])).ToImmutableArray();
    }

    private static Instrument? InstrumentOf(Zone zone) =>
        zone.Generators?.FirstOrDefault(generator => generator.GeneratorType == GeneratorEnum.Instrument)?.Instrument;

    private static bool IsPlayable(SoundFontRegion region, long poolSamples)
    {
        SampleHeader sample = region.Sample;
        return sample.End > (long)sample.Start + ShortestLoop
            && sample.End <= poolSamples
            && sample.SampleRate is >= SlowestSampling and <= FastestSampling
            && ((int)sample.SFSampleLink & RomSample) == 0
            && region.LowKey <= HighestKey && region.HighKey >= LowestKey;
    }

    private static float[] ReadSamples(Stream file, RiffMap map, uint start, uint end)
    {
        int count = (int)(end - start);
        var high = new byte[2 * count];
        file.Position = map.Samples.Start + (2L * start);
        file.ReadExactly(high);
        byte[]? low = map.LowBytes.Length > 0 ? new byte[count] : null;
        if (low is not null)
        {
            file.Position = map.LowBytes.Start + start;
            file.ReadExactly(low);
        }

        var samples = new float[count];
        for (int i = 0; i < count; i++)
        {
            int value = (BinaryPrimitives.ReadInt16LittleEndian(high.AsSpan(2 * i)) << 8) | (low?[i] ?? 0);
            samples[i] = value / 8_388_608f;
        }

        return samples;
    }

    // Addresses that lie outside the sample are held at its ends; a loop too short to be one is none.
    private static SampleZone ZoneOf(SoundFontRegion region, float[] data)
    {
        SampleHeader sample = region.Sample;
        SoundFontGenerators generators = region.Generators;
        int At(long address, int least, int most) => (int)Math.Clamp(address - sample.Start, least, most);
        int start = At(sample.Start + (long)generators.StartAddressOffset, 0, data.Length - ShortestLoop);
        int end = At(sample.End + (long)generators.EndAddressOffset, start + ShortestLoop, data.Length);
        int loopStart = At(sample.StartLoop + (long)generators.StartLoopAddressOffset, start, end);
        int loopEnd = At(sample.EndLoop + (long)generators.EndLoopAddressOffset, start, end);
        LoopMode mode = loopEnd - loopStart < ShortestLoop ? LoopMode.None : ((int)generators.SampleModes & 3) switch
        {
            1 => LoopMode.Continuous,
            3 => LoopMode.UntilRelease,
            _ => LoopMode.None,
        };
        SampleSource source = mode == LoopMode.None
            ? new SampleSource(data, (int)sample.SampleRate, LoopMode.None, start, end)
            : new SampleSource(data, (int)sample.SampleRate, mode, start, end, loopStart, loopEnd);
        int root = generators.OverridingRootKey is >= 0 and <= 127 ? generators.OverridingRootKey
            : sample.OriginalPitch <= 127 ? sample.OriginalPitch : MiddleC;
        return InTune(new SampleZone(region, source, root));
    }

    // As the font states it, the sample sounds its root key when shifted by its tuning settings.
    private static SampleZone InTune(SampleZone zone)
    {
        double shift = ZoneSettings.Of(zone, zone.RootKey, 100).Cents(zone);
        double stated = SynthMath.MidiNoteToFrequency(zone.RootKey) / SynthMath.CentsToRatio(shift);
        return zone with { Off = SampleTuning.Off(zone.Source, stated) };
    }
}
