using NAudio.Dsp;
using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>One zone sounding for one note: its samples through filter, envelopes and LFOs, whose settings are renewed block by block.</summary>
internal sealed class SampleVoice
{
    /// <summary>Frames between two renewals.</summary>
    public const int BlockFrames = 64;

    private const double FastestStep = 64.0;
    private const double OpenFilterCents = 13_500.0;
    private const float Inaudible = 1e-5f;
    private readonly InterpolatingSampleReader _reader;
    private readonly DahdsrEnvelope _volume;
    private readonly DahdsrEnvelope _modulation;
    private readonly Lfo _modulationLfo;
    private readonly Lfo _vibratoLfo;
    private readonly BiQuadFilter? _filter;
    private readonly ZoneSettings _settings;
    private readonly float[] _buffer = new float[BlockFrames];
    private readonly double _step;
    private readonly double _quality;
    private readonly float _left;
    private readonly float _right;
    private readonly float _rate;
    private readonly bool _isPitchFixed;
    private double _tremolo;
    private double _cutoffCents = double.NaN;
    private float _gain;
    private bool _isReleased;

    public SampleVoice(SampleZone zone, ZoneSettings settings, VoicePlace place, SampleRate rate)
    {
        (_settings, Start, Release, Cut, _rate) = (settings, place.Start, place.Release, long.MaxValue, rate.Hertz);
        _reader = new InterpolatingSampleReader(zone.Source);
        _volume = settings.VolumeEnvelope(rate);
        _modulation = settings.ModulationEnvelope(rate);
        _modulationLfo = settings.Lfo(rate, GeneratorEnum.FrequencyModulationLFO, GeneratorEnum.DelayModulationLFO);
        _vibratoLfo = settings.Lfo(rate, GeneratorEnum.FrequencyVibratoLFO, GeneratorEnum.DelayVibratoLFO);
        _step = (double)zone.Source.SampleRate / rate.Hertz * place.Ratio * SynthMath.CentsToRatio(settings.Cents(zone));
        (_left, _right) = Gains(settings, place);
        (_filter, _quality) = FilterOf(settings, rate);
        _isPitchFixed = settings[GeneratorEnum.ModulationEnvelopeToPitch] == 0.0 && settings[GeneratorEnum.ModulationLFOToPitch] == 0.0
            && settings[GeneratorEnum.VibratoLFOToPitch] == 0.0;
        ExclusiveClass = (int)settings[GeneratorEnum.ExclusiveClass];
        _volume.Gate(true);
        _modulation.Gate(true);
    }

    /// <summary>Voices of one class other than 0 end each other.</summary>
    public int ExclusiveClass { get; }

    /// <summary>The frame of its start.</summary>
    public long Start { get; }

    /// <summary>The frame at which the note is let go.</summary>
    public long Release { get; }

    /// <summary>The frame at which another voice of its class ends it at once.</summary>
    public long Cut { get; set; }

    /// <summary>How long it sounds on after that, in seconds.</summary>
    public double ReleaseSeconds => _volume.ReleaseSeconds;

    /// <summary>True when nothing more will come.</summary>
    public bool IsOver { get; private set; }

    /// <summary>Adds one block that starts at a frame.</summary>
    public void AddBlock(long frame, Span<float> left, Span<float> right)
    {
        if (Start >= frame + BlockFrames || IsOver)
        {
            return;
        }

        int from = (int)Math.Max(0, Start - frame);
        int count = BlockFrames - from;
        LetGo(frame);
        Span<float> buffer = _buffer.AsSpan(0, count);
        int read = _reader.Read(buffer, StepAfter(count, out double cutoff));
        buffer[read..].Clear();
        Filter(buffer, cutoff);
        float before = _gain;
        _gain = frame >= Cut ? 0f : _volume.Advance(count) * TremoloGain();
        Mix(buffer, before, (_gain - before) / count, left[from..], right[from..]);
        IsOver = read < count || frame >= Cut || _volume.IsFinished || (_isReleased && _gain < Inaudible);
    }

    private void Mix(Span<float> buffer, float gain, float slope, Span<float> left, Span<float> right)
    {
        (float toLeft, float toRight) = (_left, _right);
        for (int i = 0; i < buffer.Length; i++)
        {
            gain += slope;
            float sample = buffer[i] * gain;
            left[i] += sample * toLeft;
            right[i] += sample * toRight;
        }
    }

    private void LetGo(long frame)
    {
        if (!_isReleased && frame >= Release)
        {
            _isReleased = true;
            _volume.Gate(false);
            _modulation.Gate(false);
            _reader.Release();
        }
    }


    private double StepAfter(int count, out double cutoffCents)
    {
        double envelope = _modulation.Advance(count);
        double lfo = _modulationLfo.Advance(count);
        double vibrato = _vibratoLfo.Advance(count);
        _tremolo = lfo;
        cutoffCents = _settings[GeneratorEnum.InitialFilterCutoffFrequency] + (envelope * _settings[GeneratorEnum.ModulationEnvelopeToFilterCutoffFrequency])
            + (lfo * _settings[GeneratorEnum.ModulationLFOToFilterCutoffFrequency]);
        if (_isPitchFixed)
        {
            return Math.Min(_step, FastestStep);
        }

        double cents = (envelope * _settings[GeneratorEnum.ModulationEnvelopeToPitch]) + (lfo * _settings[GeneratorEnum.ModulationLFOToPitch])
            + (vibrato * _settings[GeneratorEnum.VibratoLFOToPitch]);
        return Math.Min(_step * SynthMath.CentsToRatio(cents), FastestStep);
    }

    private float TremoloGain()
    {
        double depth = _settings[GeneratorEnum.ModulationLFOToVolume];
        return depth == 0.0 ? 1f : (float)SynthMath.CentibelsToGain(Math.Clamp(depth * _tremolo, -960.0, 960.0));
    }

    private void Filter(Span<float> buffer, double cutoffCents)
    {
        if (_filter is null)
        {
            return;
        }

        // Below a hundredth of a semitone nothing is heard of a move.
        if (!(Math.Abs(cutoffCents - _cutoffCents) < 1.0))
        {
            _cutoffCents = cutoffCents;
            float hertz = (float)Math.Min(SynthMath.AbsoluteCentsToHertz(Math.Clamp(cutoffCents, 1500.0, OpenFilterCents)), 0.45 * _rate);
            _filter.UpdateLowPassFilter(_rate, hertz, (float)_quality);
        }

        _filter.Transform(buffer, buffer);
    }

    // The setting counts from -3 dB at cutoff (section 8.1.3, generator 9).
    private static (BiQuadFilter? Filter, double Quality) FilterOf(ZoneSettings settings, SampleRate rate)
    {
        double resonance = Math.Clamp(settings[GeneratorEnum.InitialFilterQ], 0.0, 960.0);
        double quality = SynthMath.CentibelsToGain(resonance - 30.1);
        bool isOpen = settings[GeneratorEnum.InitialFilterCutoffFrequency] >= OpenFilterCents && resonance == 0.0
            && settings[GeneratorEnum.ModulationEnvelopeToFilterCutoffFrequency] >= 0.0 && settings[GeneratorEnum.ModulationLFOToFilterCutoffFrequency] == 0.0;
        return isOpen ? (null, quality) : (BiQuadFilter.LowPassFilter(rate.Hertz, 0.4f * rate.Hertz, (float)quality), quality);
    }

    // Equal power. A resonant filter is turned down by the root of its quality, as fonts expect.
    private static (float Left, float Right) Gains(ZoneSettings settings, VoicePlace place)
    {
        double resonance = Math.Clamp(settings[GeneratorEnum.InitialFilterQ], 0.0, 960.0);
        double gain = settings.Gain * place.Gain * SynthMath.CentibelsToGain(-resonance / 2.0);
        double angle = (1.0 + Math.Clamp(settings.Pan + place.Pan, -1.0, 1.0)) * Math.PI / 4.0;
        return ((float)(gain * Math.Cos(angle)), (float)(gain * Math.Sin(angle)));
    }
}
