using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Clampwise.Sound.Strings;

namespace Clampwise.Sound.SoundFonts;

/// <summary>A performance on a SoundFont preset: voices, room, ceiling, block by block.</summary>
internal sealed class SoundFontRendering : IRendering
{
    private const int Block = SampleVoice.BlockFrames;
    private const double MostReleaseSeconds = 3.0;
    private const double RoomTailSeconds = 0.45;
    private const double FadeSeconds = 0.05;
    private readonly SampleVoice[] _voices;
    private readonly float[] _left = new float[Block];
    private readonly float[] _right = new float[Block];
    private readonly Room? _room;
    private readonly long _fadeFrames;
    private long _frame;

    public SoundFontRendering(ImmutableArray<SampleZone> zones, Performance performance, SampleRate rate, SoundFontMix mix)
    {
        _voices = [.. performance.Notes.SelectMany(note => VoicesOf(zones, note, performance, rate, mix))];
        CutWithinClasses();
        _room = mix.HasRoom ? new Room(rate) : null;
        _fadeFrames = rate.FrameAt(TimeSpan.FromSeconds(FadeSeconds));
        double tail = (mix.HasRoom ? RoomTailSeconds : 0.0) + FadeSeconds;
        FrameCount = _voices.Length == 0 ? 0 : _voices.Max(voice =>
            voice.Release + rate.FrameAt(TimeSpan.FromSeconds(Math.Min(MostReleaseSeconds, voice.ReleaseSeconds) + tail)));
    }

    /// <inheritdoc/>
    public long FrameCount { get; }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int Read(Span<float> stereo)
    {
        int frames = (int)Math.Min(stereo.Length / 2, FrameCount - _frame);
        for (int i = 0; i < frames; i++, _frame++)
        {
            int within = (int)(_frame % Block);
            if (within == 0)
            {
                ComputeBlock();
            }

            stereo[2 * i] = _left[within];
            stereo[(2 * i) + 1] = _right[within];
        }

        return frames;
    }

    private static IEnumerable<SampleVoice> VoicesOf(
        ImmutableArray<SampleZone> zones, PlayedNote note, Performance performance, SampleRate rate, SoundFontMix mix)
    {
        int key = note.Pitch.Midi;
        int velocity = note.Strength.Velocity;
        double across = performance.StringCount < 2 ? 0.0 : 1.0 - (2.0 * (note.String.Number - 1) / (performance.StringCount - 1));
        var place = new VoicePlace(
            rate.FrameAt(note.Start),
            rate.FrameAt(note.End),
            performance.ConcertPitch.Hertz(note.Pitch, note.Detune) / note.Pitch.Hertz(),
            mix.Gain,
            mix.StringPan * across);
        return zones.Where(zone => zone.Region.Matches(key, velocity))
            .Select(zone => new SampleVoice(zone, ZoneSettings.Of(zone, key, velocity), place, rate));
    }

    // A later note of a class ends the earlier ones; zones of one note don't end each other.
    private void CutWithinClasses()
    {
        foreach (IGrouping<int, SampleVoice> group in _voices.Where(voice => voice.ExclusiveClass != 0).GroupBy(voice => voice.ExclusiveClass))
        {
            SampleVoice[] members = [.. group.OrderBy(voice => voice.Start)];
            foreach (SampleVoice voice in members)
            {
                voice.Cut = members.FirstOrDefault(later => later.Start > voice.Start)?.Start ?? long.MaxValue;
            }
        }
    }

    private void ComputeBlock()
    {
        Array.Clear(_left);
        Array.Clear(_right);
        foreach (SampleVoice voice in _voices)
        {
            voice.AddBlock(_frame, _left, _right);
        }

        _room?.Process(_left, _right);
        for (int i = 0; i < Block; i++)
        {
            float fade = Math.Clamp((float)(FrameCount - _frame - i) / _fadeFrames, 0f, 1f);
            (_left[i], _right[i]) = (SoftCeiling.Bend(_left[i]) * fade, SoftCeiling.Bend(_right[i]) * fade);
        }
    }
}
