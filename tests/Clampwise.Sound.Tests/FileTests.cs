using Clampwise.Fretboard;
using Clampwise.Sound.Files;
using Clampwise.Sound.Strings;
using Clampwise.Theory;
using NAudio.Midi;
using NAudio.Wave;

namespace Clampwise.Sound.Tests;

public sealed class FileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("clampwise").FullName;

    [Theory]
    [InlineData(WaveDepth.Bits16, 1.0 / 32767)]
    [InlineData(WaveDepth.Bits24, 1.0 / 8388607)]
    [InlineData(WaveDepth.Float, 0.0)]
    public void A_wav_file_reads_back_as_what_is_played(WaveDepth depth, double step)
    {
        string path = Path.Combine(_folder, "strum.wav");
        Performance strum = Make.Strum(seconds: 0.3);
        float[] expected = Offline.Render(new PluckedGuitar(), strum);
        Assert.Equal(expected.Length / 2, Written.To(path, stream => WaveFile.Write(stream, new PluckedGuitar(), strum, depth)));
        using var reader = new WaveFileReader(path);
        Assert.Equal((44_100, 2), (reader.WaveFormat.SampleRate, reader.WaveFormat.Channels));
        var samples = new float[expected.Length];
        int read = reader.ToSampleProvider().Read(samples);
        Assert.Equal(expected.Length, read);
        Assert.All(samples.Zip(expected), pair => Assert.InRange(pair.First - pair.Second, (-0.6 * step) - 1.6e-5, (0.6 * step) + 1.6e-5));
    }

    [Fact]
    public void A_midi_file_has_each_string_on_its_channel_and_bends_what_is_detuned()
    {
        string path = Path.Combine(_folder, "strum.mid");
        Performance strum = Make.Strum("022100").Detuned(StringNumber.Of(3), new Cents(25.0));
        Assert.Equal(6, Written.To(path, stream => StandardMidiFile.Write(stream, strum)));
        MidiEvent[] events = [.. new MidiFile(path).Events[0]];
        NoteOnEvent[] notes = [.. events.OfType<NoteOnEvent>().Where(note => note.Velocity > 0)];
        Assert.Equal([(6, 40), (5, 47), (4, 52), (3, 56), (2, 59), (1, 64)], notes.Select(note => (note.Channel, note.NoteNumber)));
        // 25 of 200 cents are an eighth of 8192 steps (MIDI 1.0: the centre is 8192, the usual range two semitones).
        Assert.Equal([(6, 8192), (5, 8192), (4, 8192), (3, 9216), (2, 8192), (1, 8192)], events.OfType<PitchWheelChangeEvent>().Select(bend => (bend.Channel, bend.Pitch)));
        Assert.All(notes, note => Assert.InRange(note.NoteLength, 3_500, 4_000));
    }

    [Theory]
    [InlineData(8_000)]
    [InlineData(0)]
    [InlineData(400_000)]
    public void Odd_sample_rates_are_refused(int hertz) =>
        Assert.Equal($"a sample rate of {hertz} Hz is out of range: use 22050 to 192000, such as 44100 or 48000", SampleRate.Of(hertz).Fault.Message);

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
