using System.Runtime.InteropServices;
using Clampwise.Fretboard;
using Clampwise.Sound.Files;
using Clampwise.Sound.SoundFonts;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

/// <summary>
/// The SoundFont voice against fluidsynth, which plays the same notes, by way of our MIDI file, from the same font: TimGM6mb as Debian
/// packages it (timgm6mb-soundfont, fluidsynth). Where they are not installed these tests are skipped, unless CLAMPWISE_OUTSIDE is 1.
/// </summary>
public class FluidsynthTests
{
    private const string Font = "/usr/share/sounds/sf2/TimGM6mb.sf2";
    private static readonly int[] s_keys = [40, 45, 50, 55, 59, 64];
    private static readonly SampleRate s_rate = SampleRate.Standard;

    [OutsideTheory("fluidsynth", Font)]
    [InlineData(25, 0.7, 0.0)]
    [InlineData(25, 0.35, 0.0)]
    [InlineData(25, 0.7, -25.0)]
    [InlineData(0, 0.7, 0.0)]
    [InlineData(16, 0.7, 0.0)]
    [InlineData(24, 0.5, 0.0)]
    [InlineData(26, 0.9, 0.0)]
    [InlineData(30, 0.7, 0.0)]
    [InlineData(33, 0.7, 0.0)]
    public void Pitch_loudness_and_envelope_agree(int preset, double strength, double detune)
    {
        Performance performance = Notes(strength, detune);
        float[] theirs = TheirRendering(performance, preset);
        float[] ours = OurRendering(performance, preset);
        for (int i = 0; i < s_keys.Length; i++)
        {
            double hertz = performance.Notes[i].Pitch.Hertz();
            double Heard(float[] samples) => Spectrum.PeakNear(Spectrum.Of(samples, s_rate, (2.0 * i) + 0.2, 1.2), s_rate, hertz);
            Assert.InRange(Cents.Between(Heard(theirs), Heard(ours)).Value, -0.2, 0.2);
            foreach (double at in new[] { 0.05, 0.4, 1.2, 1.8 })
            {
                double difference = Make.Decibels(Size(ours, (2.0 * i) + at) / Size(theirs, (2.0 * i) + at));
                Assert.True(Math.Abs(difference) < 1.0, $"key {s_keys[i]} at {at} s: {difference:0.0} dB");
            }
        }
    }

    private static Performance Notes(double strength, double detune) => Performance.Of(
        s_keys.Select((key, i) => new PlayedNote(
            StringNumber.Of(6 - i), Pitch.FromMidi(key), Fret.Nut, Contact.Nut, TimeSpan.FromSeconds(2 * i), TimeSpan.FromSeconds(1.9))
        {
            Strength = Strength.Of(strength).Value,
            Detune = new Cents(detune),
        }),
        6);

    private static float[] OurRendering(Performance performance, int preset)
    {
        SoundFontFile file = SoundFontFile.Open(Font).Value;
        IRendering rendering = file.Find($"0:{preset}").Then(file.Load).Value.StartPlain(performance, s_rate);
        var samples = new float[2 * rendering.FrameCount];
        rendering.Read(samples);
        return samples;
    }

    private static float[] TheirRendering(Performance performance, int preset)
    {
        string midi = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".mid");
        string raw = Path.ChangeExtension(midi, ".raw");
        Assert.Equal(s_keys.Length, Written.To(midi, stream => StandardMidiFile.Write(stream, performance)));
        ChoosePreset(midi, preset);
        OutsideTools.Run("fluidsynth", "-ni", "-q", "-R", "0", "-C", "0", "-g", "0.2", "-r", "44100", "-O", "float", "-T", "raw", "-F", raw, Font, midi);
        float[] samples = MemoryMarshal.Cast<byte, float>(File.ReadAllBytes(raw)).ToArray();
        File.Delete(midi);
        File.Delete(raw);
        return samples;
    }

    // Our files ask for the steel-string guitar: program change (0xC0 to 0xCF) to 25.
    private static void ChoosePreset(string midi, int preset)
    {
        byte[] bytes = File.ReadAllBytes(midi);
        for (int i = 1; i < bytes.Length; i++)
        {
            bytes[i] = bytes[i] == 25 && (bytes[i - 1] & 0xF0) == 0xC0 ? (byte)preset : bytes[i];
        }

        File.WriteAllBytes(midi, bytes);
    }

    private static double Size(float[] stereo, double fromSeconds)
    {
        ReadOnlySpan<float> part = stereo.AsSpan(2 * (int)(fromSeconds * s_rate.Hertz), 2 * s_rate.Hertz / 10);
        double sum = 0.0;
        foreach (float sample in part)
        {
            sum += (double)sample * sample;
        }

        return Math.Sqrt(sum / part.Length);
    }
}
