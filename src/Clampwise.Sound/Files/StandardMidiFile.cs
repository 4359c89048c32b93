using Clampwise.Theory;
using NAudio.Midi;

namespace Clampwise.Sound.Files;

/// <summary>
/// Writes performances as Standard MIDI Files (format 0): each string on a channel of its own, the highest string on channel 1, so that
/// a string out of tune bends alone. Bends span two semitones each way, the range that General MIDI starts with. Clicks go to its percussion channel.
/// </summary>
public static class StandardMidiFile
{
    private const int TicksPerQuarter = 960;
    private const double QuartersPerSecond = 2.0;
    private const int MicrosecondsPerQuarter = 500_000;
    private const int SteelGuitar = 25;
    private const int PercussionChannel = 10;
    private const int HighWoodBlock = 76;
    private const int LowWoodBlock = 77;
    private const int ClickVelocity = 90;
    private const int ClickTicks = 120;
    private const int CentredBend = 8192;
    private const double BendRangeCents = 200.0;

    private const int Track = 0;

    /// <summary>Writes a performance into a stream, and leaves it open; gives the number of notes.</summary>
    public static int Write(Stream stream, Performance performance)
    {
        MidiFile.Export(stream, EventsOf(performance));
        return performance.Notes.Length;
    }

    private static MidiEventCollection EventsOf(Performance performance)
    {
        var events = new MidiEventCollection(0, TicksPerQuarter);
        events.AddEvent(new TempoEvent(MicrosecondsPerQuarter, 0), Track);
        foreach (int channel in performance.Notes.Select(ChannelOf).Distinct().Order())
        {
            events.AddEvent(new PatchChangeEvent(0, channel, SteelGuitar), Track);
        }

        foreach (PlayedNote note in performance.Notes)
        {
            long start = TicksOf(note.Start);
            long length = Math.Max(1, TicksOf(note.End) - start);
            var on = new NoteOnEvent(start, ChannelOf(note), note.Pitch.Midi, note.Strength.Velocity, (int)length);
            events.AddEvent(new PitchWheelChangeEvent(start, ChannelOf(note), BendOf(note, performance)), Track);
            events.AddEvent(on, Track);
            events.AddEvent(on.OffEvent!, Track);
        }

        foreach (Click click in performance.Clicks)
        {
            var on = new NoteOnEvent(TicksOf(click.Start), PercussionChannel, click.IsAccented ? HighWoodBlock : LowWoodBlock, ClickVelocity, ClickTicks);
            events.AddEvent(on, Track);
            events.AddEvent(on.OffEvent!, Track);
        }

        events.PrepareForExport();
        return events;
    }

    private static int ChannelOf(PlayedNote note) => note.String.Number;

    private static long TicksOf(TimeSpan time) => (long)Math.Round(time.TotalSeconds * QuartersPerSecond * TicksPerQuarter);

    private static int BendOf(PlayedNote note, Performance performance)
    {
        double cents = Cents.Between(note.Pitch.Hertz(), performance.ConcertPitch.Hertz(note.Pitch, note.Detune)).Value;
        return (int)Math.Clamp(Math.Round(CentredBend + (cents / BendRangeCents * CentredBend)), 0.0, (2.0 * CentredBend) - 1.0);
    }
}
