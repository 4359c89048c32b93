using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Clampwise.Sound.Blocks;
using Clampwise.Theory;

namespace Clampwise.Sound.SoundFonts;

/// <summary>A performance on a SoundFont preset: voices, room, ceiling, block by block.</summary>
internal sealed class SoundFontRendering : BlockRendering
{
    private const double MostReleaseSeconds = 3.0;
    private const double RoomTailSeconds = 0.45;
    private const double DryTailSeconds = 0.06;
    private const double StrumSeconds = 0.5;
    private readonly SampleVoice[] _voices;
    private readonly VoiceQuad[] _quads;
    private readonly Vector128<float>[] _sumLeft = new Vector128<float>[BlockFrames];
    private readonly Vector128<float>[] _sumRight = new Vector128<float>[BlockFrames];
    private readonly Room? _room;
    private int _first;

    public SoundFontRendering(ImmutableArray<SampleZone> zones, Performance performance, SampleRate rate, SoundFontMix mix) : base(performance, rate)
    {
        _voices = [.. performance.Notes.SelectMany(note => VoicesOf(zones, note, performance, rate, mix))];
        CutWithinClasses();
        _quads = [.. Together(_voices, rate).Select(voices => new VoiceQuad(voices))];
        _room = mix.HasRoom ? new Room(rate) : null;
        double tail = mix.HasRoom ? RoomTailSeconds : DryTailSeconds;
        NotesEnd = _voices.Length == 0 ? 0 : _voices.Max(voice =>
            voice.Release + rate.FrameAt(TimeSpan.FromSeconds(Math.Min(MostReleaseSeconds, voice.ReleaseSeconds) + tail)));
    }

    /// <inheritdoc/>
    protected override long NotesEnd { get; }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    protected override void ComputeBlock(long frame, Span<float> left, Span<float> right)
    {
        Array.Clear(_sumLeft);
        Array.Clear(_sumRight);
        // Quads stand in the order of their starts: those before the first are over, those after the last haven't begun.
        while (_first < _quads.Length && _quads[_first].IsOver)
        {
            _first++;
        }

        for (int i = _first; i < _quads.Length && _quads[i].Start < frame + BlockFrames; i++)
        {
            _quads[i].AddBlock(frame, _sumLeft, _sumRight);
        }

        for (int i = 0; i < BlockFrames; i++)
        {
            (left[i], right[i]) = (Vector128.Sum(_sumLeft[i]), Vector128.Sum(_sumRight[i]));
        }

        _room?.Process(left, right);
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
        VoicePlace For(SampleZone zone) => mix.IsInTune ? place with { Ratio = place.Ratio / zone.Off.Ratio } : place;
        return zones.Where(zone => zone.Region.Matches(key, velocity))
            .Select(zone => new SampleVoice(zone, ZoneSettings.Of(zone, key, velocity), For(zone), rate));
    }

    // Voices that start about together, and so end about together, share a quad: then few lanes run empty.
    private static IEnumerable<SampleVoice[]> Together(SampleVoice[] voices, SampleRate rate)
    {
        long near = rate.FrameAt(TimeSpan.FromSeconds(StrumSeconds));
        var quad = new List<SampleVoice>(VoiceQuad.Lanes);
        foreach (SampleVoice voice in voices)
        {
            if (quad.Count == VoiceQuad.Lanes || (quad.Count > 0 && voice.Start - quad[0].Start > near))
            {
                yield return [.. quad];
                quad.Clear();
            }

            quad.Add(voice);
        }

        if (quad.Count > 0)
        {
            yield return [.. quad];
        }
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
}
