using Clampwise.Sound.Blocks;
using Clampwise.Theory;
using NAudio.Dsp;
using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>
/// One zone sounding for one note: its samples at the right speed, and what is to be done to them. Speed, filter and gain follow
/// envelopes and LFOs from block to block; filtering and mixing are <see cref="VoiceQuad"/>'s work.
/// </summary>
internal sealed class SampleVoice
{
    private const int BlockFrames = BlockRendering.BlockFrames;
    private const double FastestStep = 64.0;
    private const double OpenFilterCents = 13_500.0;

    // 96 dB below full scale.
    private const float Inaudible = 1.5e-5f;
    private readonly InterpolatingSampleReader _reader;
    private readonly ZoneSettings _settings;
    private readonly DahdsrEnvelope _volume;
    private readonly DahdsrEnvelope? _modulation;
    private readonly Lfo? _modulationLfo;
    private readonly Lfo? _vibratoLfo;
    private readonly float[] _buffer = new float[BlockFrames];
    private readonly double _step;
    private readonly double _quality;
    private readonly double _rate;
    private readonly bool _isFilterOpen;
    private double _cutoffCents = double.NaN;
    private bool _isReleased;

    public SampleVoice(SampleZone zone, ZoneSettings settings, VoicePlace place, SampleRate rate)
    {
        (_settings, Start, Release, _rate) = (settings, place.Start, place.Release, rate.Hertz);
        _reader = new InterpolatingSampleReader(zone.Source);
        _step = (double)zone.Source.SampleRate / rate.Hertz * place.Ratio * SynthMath.CentsToRatio(settings.Cents(zone));
        (LeftShare, RightShare) = Shares(settings, place);
        _quality = SynthMath.CentibelsToGain(settings.Resonance - 30.1);
        _volume = settings.VolumeEnvelope(rate);
        _modulation = settings.UsesModulationEnvelope ? settings.ModulationEnvelope(rate) : null;
        _modulationLfo = settings.UsesModulationLfo ? settings.Lfo(rate, GeneratorEnum.FrequencyModulationLFO, GeneratorEnum.DelayModulationLFO) : null;
        _vibratoLfo = settings.UsesVibratoLfo ? settings.Lfo(rate, GeneratorEnum.FrequencyVibratoLFO, GeneratorEnum.DelayVibratoLFO) : null;
        _isFilterOpen = settings.IsFilterOpen(OpenFilterCents);
        _volume.Gate(true);
        _modulation?.Gate(true);
    }

    /// <summary>The frame of its start.</summary>
    public long Start { get; }

    /// <summary>The frame at which the note is let go.</summary>
    public long Release { get; }

    /// <summary>The frame at which another voice of its class ends it at once.</summary>
    public long Cut { get; set; } = long.MaxValue;

    /// <summary>Voices of one class other than 0 end each other.</summary>
    public int ExclusiveClass => (int)_settings[GeneratorEnum.ExclusiveClass];

    /// <summary>How long it sounds on after its release, in seconds.</summary>
    public double ReleaseSeconds => _volume.ReleaseSeconds;

    /// <summary>Linear gain to the left, besides <see cref="Gain"/>.</summary>
    public float LeftShare { get; }

    /// <summary>Linear gain to the right, besides <see cref="Gain"/>.</summary>
    public float RightShare { get; }

    /// <summary>True when nothing more will come.</summary>
    public bool IsOver { get; private set; }

    /// <summary>The samples of this block, not yet filtered.</summary>
    public ReadOnlySpan<float> Samples => _buffer;

    /// <summary>The gain at the end of this block; it gets there in a straight line.</summary>
    public float Gain { get; private set; }

    /// <summary>The filter for this block.</summary>
    public LowPass Filter { get; private set; } = LowPass.Open;

    /// <summary>Computes the block that starts at a frame; false if the voice is silent in it.</summary>
    public bool Compute(long frame)
    {
        if (Start >= frame + BlockFrames || IsOver)
        {
            return false;
        }

        int from = (int)Math.Max(0, Start - frame);
        int count = BlockFrames - from;
        LetGo(frame);
        double envelope = _modulation?.Advance(count) ?? 0.0;
        double lfo = _modulationLfo?.Advance(count) ?? 0.0;
        int read = _reader.Read(_buffer.AsSpan(from), StepAt(envelope, lfo, _vibratoLfo?.Advance(count) ?? 0.0));
        _buffer.AsSpan(0, from).Clear();
        _buffer.AsSpan(from + read).Clear();
        MoveFilter(envelope, lfo);
        Gain = frame >= Cut ? 0f : _volume.Advance(count) * Tremolo(lfo);
        IsOver = read < count || frame >= Cut || _volume.IsFinished || HasFaded;
        return true;
    }

    private bool HasFaded => _volume.Stage >= DahdsrEnvelope.EnvelopeStage.Decay && Gain * Math.Max(LeftShare, RightShare) < Inaudible;

    private void LetGo(long frame)
    {
        if (!_isReleased && frame >= Release)
        {
            _isReleased = true;
            _volume.Gate(false);
            _modulation?.Gate(false);
            _reader.Release();
        }
    }

    private double StepAt(double envelope, double lfo, double vibrato)
    {
        double cents = (envelope * _settings[GeneratorEnum.ModulationEnvelopeToPitch]) + (lfo * _settings[GeneratorEnum.ModulationLFOToPitch])
            + (vibrato * _settings[GeneratorEnum.VibratoLFOToPitch]);
        return Math.Min(cents == 0.0 ? _step : _step * SynthMath.CentsToRatio(cents), FastestStep);
    }

    private float Tremolo(double lfo) => lfo == 0.0
        ? 1f
        : (float)SynthMath.CentibelsToGain(Math.Clamp(lfo * _settings[GeneratorEnum.ModulationLFOToVolume], -960.0, 960.0));

    private void MoveFilter(double envelope, double lfo)
    {
        if (_isFilterOpen)
        {
            return;
        }

        double cents = _settings[GeneratorEnum.InitialFilterCutoffFrequency] + (lfo * _settings[GeneratorEnum.ModulationLFOToFilterCutoffFrequency])
            + (envelope * _settings[GeneratorEnum.ModulationEnvelopeToFilterCutoffFrequency]);
        // Below a hundredth of a semitone nothing is heard of a move.
        if (!(Math.Abs(cents - _cutoffCents) < 1.0))
        {
            _cutoffCents = cents;
            Filter = LowPass.Of(Math.Min(SynthMath.AbsoluteCentsToHertz(Math.Clamp(cents, 1500.0, OpenFilterCents)), 0.45 * _rate), _quality, _rate);
        }
    }

    // Equal power. A resonant filter is turned down by the root of its quality, as fonts expect.
    private static (float Left, float Right) Shares(ZoneSettings settings, VoicePlace place)
    {
        double gain = settings.Gain * place.Gain * SynthMath.CentibelsToGain(-settings.Resonance / 2.0);
        double angle = (1.0 + Math.Clamp(settings.Pan + place.Pan, -1.0, 1.0)) * Math.PI / 4.0;
        return ((float)(gain * Math.Cos(angle)), (float)(gain * Math.Sin(angle)));
    }
}
