using Clampwise.Sound.Files;
using Clampwise.Sound.SoundFonts;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

public class SoundFontTests
{
    private static readonly SampleRate s_rate = SampleRate.Standard;

    [Theory]
    [InlineData(null, "0:25 Test Guitar")]
    [InlineData("25", "0:25 Test Guitar")]
    [InlineData("0:0", "0:0 Test Piano")]
    [InlineData("test piano", "0:0 Test Piano")]
    [InlineData("guit", "0:25 Test Guitar")]
    public void Presets_are_found_by_name_and_number(string? asked, string found) =>
        Assert.Equal(found, Using(SmallSoundFont.Bytes(), file => file.Find(asked).Value.ToString()));

    [Theory]
    [InlineData("99")]
    [InlineData("1:25")]
    [InlineData("banjo")]
    [InlineData("99999999999999")]
    public void A_preset_that_is_not_there_is_a_fault_that_names_some(string asked) => Assert.Equal(
        $"no preset is called '{asked}': there are 'Test Piano' (0:0), 'Test Guitar' (0:25)",
        Using(SmallSoundFont.Bytes(), file => file.Find(asked).Fault.Message));

    [Theory]
    [InlineData(0.0)]
    [InlineData(7.0)]
    [InlineData(-12.0)]
    public void A_font_that_is_out_of_tune_is_put_in_tune(double cents)
    {
        SoundFontInstrument instrument = Using(SmallSoundFont.Bytes(cents), Load);
        foreach (int fret in new[] { 0, 5, 12 })
        {
            Performance note = Make.Note(1, fret);
            double wanted = note.Notes[0].Pitch.Hertz();
            double heard = Spectrum.PeakNear(Spectrum.Of(Offline.Render(instrument, note), s_rate, 0.1, 1.5), s_rate, wanted);
            Assert.InRange(Cents.Between(wanted, heard).Value, -0.3, 0.3);
        }
    }

    [Fact]
    public void Only_the_samples_of_the_preset_are_read() =>
        Assert.Equal(8_820, Using(SmallSoundFont.Bytes(padding: 2_000_000), file => Load(file).SampleCount));

    [Fact]
    public void A_file_of_half_a_gigabyte_takes_no_more_memory_than_its_preset()
    {
        string path = SmallSoundFont.LargeFile(extraBytes: 500_000_000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        SoundFontInstrument instrument = SoundFontFile.Open(path).Then(file => file.Find(null).Then(file.Load)).Value;
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        File.Delete(path);
        Assert.Equal(8_820, instrument.SampleCount);
        Assert.InRange(allocated, 0, 5_000_000);
    }

    [Fact]
    public void Louder_strokes_follow_the_square_of_the_velocity()
    {
        SoundFontInstrument instrument = Using(SmallSoundFont.Bytes(), Load);
        double Peak(double strength) => Offline.Render(instrument, Make.Note(1, 5, strength: strength)).Max(Math.Abs);
        // Attenuation of 400 log10(127 / v) cB is 40 log10(127 / v) dB (SoundFont Technical Specification 2.04, section 8.4.1).
        Assert.InRange(Make.Decibels(Peak(0.9) / Peak(0.45)), 11.5, 12.5);
    }

    [Fact]
    public void Reading_allocates_nothing_and_does_not_depend_on_how_much_is_read()
    {
        SoundFontInstrument instrument = Using(SmallSoundFont.Bytes(), Load);
        Performance strum = Make.Strum(seconds: 0.4);
        float[] whole = Offline.Render(instrument, strum);
        IRendering rendering = instrument.Start(strum, s_rate);
        var pieces = new float[whole.Length];
        rendering.Read(pieces.AsSpan(0, 2));
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int done = 2; done < pieces.Length;)
        {
            done += 2 * rendering.Read(pieces.AsSpan(done, Math.Min(2 * 100, pieces.Length - done)));
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.Equal(whole, pieces);
    }

    [Fact]
    public void Notes_end_without_a_click_and_the_end_is_silent()
    {
        float[] samples = Offline.Render(Using(SmallSoundFont.Bytes(), Load), Make.Note(1, 5, seconds: 0.5));
        double steepest = samples.Skip(2).Zip(samples, (later, sooner) => Math.Abs(later - sooner)).Max();
        // A sine of 440 Hz moves at most by 2 pi f / rate of its peak from frame to frame.
        Assert.True(steepest < 1.3 * samples.Max(Math.Abs) * 2.0 * Math.PI * 440.0 / s_rate.Hertz);
        Assert.Equal(0f, samples[^1], 1e-5f);
    }

    [Fact]
    public void A_file_that_is_no_soundfont_is_a_fault()
    {
        string path = SmallSoundFont.File("this is a song"u8.ToArray());
        Assert.StartsWith("this is not a SoundFont", SoundFontFile.Open(path).Fault.Message, StringComparison.Ordinal);
        File.Delete(path);
        Assert.StartsWith($"the SoundFont {path} can't be read: ", SoundFontFile.Open(path).Fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_truncated_file_is_a_fault()
    {
        byte[] whole = SmallSoundFont.Bytes();
        for (int length = 0; length < whole.Length; length += length < 200 || length > whole.Length - 700 ? 1 : 997)
        {
            Assert.False(TryEverything(whole[..length]), $"cut to {length} bytes");
        }
    }

    // Every table byte turned into the values that hurt most, one at a time, and seeded random damage: never an exception, never a hang.
    [Fact]
    public void Damaged_files_are_faults_or_play_but_never_throw()
    {
        byte[] whole = SmallSoundFont.Bytes();
        int tables = whole.Length - 900;
        for (int at = tables; at < whole.Length; at++)
        {
            foreach (byte value in new byte[] { 0x00, 0x80, 0xFF })
            {
                byte[] damaged = [.. whole];
                damaged[at] = value;
                TryEverything(damaged);
            }
        }

        var random = new Random(11);
        for (int i = 0; i < 600; i++)
        {
            byte[] damaged = [.. whole];
            for (int hits = random.Next(1, 12); hits > 0; hits--)
            {
                int at = random.Next(3) == 0 ? random.Next(120) : random.Next(tables, whole.Length);
                damaged[at] = (byte)random.Next(256);
            }

            TryEverything(damaged);
        }
    }

    private static SoundFontInstrument Load(SoundFontFile file) => file.Find(null).Then(file.Load).Value;

    private static T Using<T>(byte[] bytes, Func<SoundFontFile, T> use)
    {
        string path = SmallSoundFont.File(bytes);
        try
        {
            return use(SoundFontFile.Open(path).Value);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static bool TryEverything(byte[] bytes)
    {
        string path = SmallSoundFont.File(bytes);
        Result<SoundFontInstrument> loaded = SoundFontFile.Open(path).Then(file => file.Find(null).Then(file.Load));
        File.Delete(path);
        if (loaded.IsGood)
        {
            float[] samples = Offline.Render(loaded.Value, Make.Note(1, 5, seconds: 0.05));
            Assert.All(samples, sample => Assert.True(Math.Abs(sample) < 1f));
        }

        return loaded.IsGood;
    }
}
