using Clampwise.Theory;
using NAudio.Dsp;
using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>The settings of a zone for one note, modulators added, in the units of the specification (section 8.1.3).</summary>
internal sealed class ZoneSettings
{
    // Players scale the generator for attenuation by this, as the hardware that fonts were made on did (common practice).
    private const double AttenuationShare = 0.4;

    // The library's envelopes fall by 100 dB in the time given; other players by 96.
    private const double EnvelopeScale = 100.0 / 96.0;
    private const double ShortestTimecents = -12_000.0;
    private const double LongestTimecents = 8_000.0;
    private const double MostAttenuation = 1440.0;
    private readonly double[] _values;
    private readonly double _ownAttenuation;

    private ZoneSettings(double[] values, double ownAttenuation, int key) => (_values, _ownAttenuation, Key) = (values, ownAttenuation, key);

    /// <summary>The key that counts for this zone, 0 to 127.</summary>
    public int Key { get; }

    /// <summary>The settings for a key and velocity, which a zone can override.</summary>
    public static ZoneSettings Of(SampleZone zone, int key, int velocity)
    {
        SoundFontGenerators generators = zone.Region.Generators;
        key = generators.KeyNumberOverride is >= 0 and <= 127 ? generators.KeyNumberOverride : key;
        velocity = generators.VelocityOverride is >= 1 and <= 127 ? generators.VelocityOverride : velocity;
        var values = new double[(int)GeneratorEnum.UnusedEnd + 1];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = generators[(GeneratorEnum)i];
        }

        double own = Math.Clamp(values[(int)GeneratorEnum.InitialAttenuation], 0.0, MostAttenuation);
        values[(int)GeneratorEnum.InitialAttenuation] = 0.0;
        Modulation.AddTo(values, zone.Region, key, velocity);
        return new ZoneSettings(values, own, key);
    }

    /// <summary>A setting as it is.</summary>
    public double this[GeneratorEnum generator] => _values[(int)generator];

    /// <summary>Linear gain from all attenuation.</summary>
    public double Gain => SynthMath.CentibelsToGain(
        -Math.Clamp((AttenuationShare * _ownAttenuation) + this[GeneratorEnum.InitialAttenuation], 0.0, MostAttenuation));

    /// <summary>How far the zone's sample has to be shifted, in cents, before envelopes and LFOs.</summary>
    public double Cents(SampleZone zone) => ((Key - zone.RootKey) * this[GeneratorEnum.ScaleTuning])
        + (100.0 * this[GeneratorEnum.CoarseTune]) + this[GeneratorEnum.FineTune] + zone.Region.Sample.PitchCorrection;

    /// <summary>Place from left (-1) to right (1).</summary>
    public double Pan => Math.Clamp(this[GeneratorEnum.Pan] / 500.0, -1.0, 1.0);

    /// <summary>Resonance of the filter in centibels, 0 to 960.</summary>
    public double Resonance => Math.Clamp(this[GeneratorEnum.InitialFilterQ], 0.0, 960.0);

    /// <summary>True if the modulation envelope changes anything.</summary>
    public bool UsesModulationEnvelope => this[GeneratorEnum.ModulationEnvelopeToPitch] != 0.0 || this[GeneratorEnum.ModulationEnvelopeToFilterCutoffFrequency] != 0.0;

    /// <summary>True if the modulation LFO changes anything.</summary>
    public bool UsesModulationLfo => this[GeneratorEnum.ModulationLFOToPitch] != 0.0 || this[GeneratorEnum.ModulationLFOToVolume] != 0.0
        || this[GeneratorEnum.ModulationLFOToFilterCutoffFrequency] != 0.0;

    /// <summary>True if the vibrato LFO changes anything.</summary>
    public bool UsesVibratoLfo => this[GeneratorEnum.VibratoLFOToPitch] != 0.0;

    /// <summary>True if the filter never comes below a cutoff and has no resonance.</summary>
    public bool IsFilterOpen(double cutoffCents) => Resonance == 0.0 && this[GeneratorEnum.InitialFilterCutoffFrequency] >= cutoffCents
        && this[GeneratorEnum.ModulationEnvelopeToFilterCutoffFrequency] >= 0.0 && this[GeneratorEnum.ModulationLFOToFilterCutoffFrequency] == 0.0;

    /// <summary>Seconds of a time setting.</summary>
    public float Seconds(GeneratorEnum generator) => Seconds(this[generator]);

    /// <summary>The frequency in hertz of a setting in absolute cents.</summary>
    public float Hertz(GeneratorEnum generator) => (float)SynthMath.AbsoluteCentsToHertz(Math.Clamp(this[generator], -16_000.0, 14_000.0));

    /// <summary>The volume envelope of a note, not yet started.</summary>
    public DahdsrEnvelope VolumeEnvelope(SampleRate rate) => new(rate.Hertz)
    {
        DelaySeconds = Seconds(GeneratorEnum.DelayVolumeEnvelope),
        AttackSeconds = Seconds(GeneratorEnum.AttackVolumeEnvelope),
        HoldSeconds = Keyed(GeneratorEnum.HoldVolumeEnvelope, GeneratorEnum.KeyNumberToVolumeEnvelopeHold),
        DecaySeconds = (float)(EnvelopeScale * Keyed(GeneratorEnum.DecayVolumeEnvelope, GeneratorEnum.KeyNumberToVolumeEnvelopeDecay)),
        SustainLevel = (float)SynthMath.CentibelsToGain(-Math.Clamp(this[GeneratorEnum.SustainVolumeEnvelope], 0.0, MostAttenuation)),
        ReleaseSeconds = (float)(EnvelopeScale * Seconds(GeneratorEnum.ReleaseVolumeEnvelope)),
    };

    /// <summary>The modulation envelope of a note, not yet started.</summary>
    public DahdsrEnvelope ModulationEnvelope(SampleRate rate) => new(rate.Hertz)
    {
        DelaySeconds = Seconds(GeneratorEnum.DelayModulationEnvelope),
        AttackSeconds = Seconds(GeneratorEnum.AttackModulationEnvelope),
        HoldSeconds = Keyed(GeneratorEnum.HoldModulationEnvelope, GeneratorEnum.KeyNumberToModulationEnvelopeHold),
        DecaySeconds = Keyed(GeneratorEnum.DecayModulationEnvelope, GeneratorEnum.KeyNumberToModulationEnvelopeDecay),
        SustainLevel = (float)(1.0 - Math.Clamp(this[GeneratorEnum.SustainModulationEnvelope] / 1000.0, 0.0, 1.0)),
        ReleaseSeconds = Seconds(GeneratorEnum.ReleaseModulationEnvelope),
        DecayReleaseShape = DahdsrEnvelope.RampShape.Linear,
    };

    /// <summary>An LFO: a triangle that rises from zero after its delay.</summary>
    public Lfo Lfo(SampleRate rate, GeneratorEnum frequency, GeneratorEnum delay) => new(rate.Hertz)
    {
        Waveform = LfoWaveform.Triangle,
        FrequencyHz = Math.Clamp(Hertz(frequency), 0.001f, 100f),
        StartPhase = 0.75f,
        DelaySeconds = Seconds(delay),
    };

    private float Keyed(GeneratorEnum time, GeneratorEnum perKey) => Seconds(this[time] + ((60 - Key) * this[perKey]));

    private static float Seconds(double timecents) => timecents <= ShortestTimecents
        ? 0f
        : (float)SynthMath.TimecentsToSeconds(Math.Min(timecents, LongestTimecents));
}
