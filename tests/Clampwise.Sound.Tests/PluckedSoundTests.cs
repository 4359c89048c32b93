using Clampwise.Fretboard;
using Clampwise.Sound.Blocks;
using Clampwise.Sound.Files;
using Clampwise.Sound.Performing;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

public class PluckedSoundTests
{
    private static readonly PluckedGuitar s_guitar = new();
    private static readonly SampleRate s_rate = SampleRate.Standard;

    // Decay: several seconds in the treble, longer in the bass (from memory). Slopes between 0.2 and 2 s give the time for 60 dB; the two
    // polarisations spread it around the make's own figure.
    [Theory]
    [InlineData(6, 5.0, 14.0)]
    [InlineData(4, 4.0, 12.0)]
    [InlineData(1, 2.5, 8.0)]
    public void An_open_string_rings_for_seconds(int stringNumber, double atLeast, double atMost)
    {
        Assert.InRange(DecaySeconds(Make.Note(stringNumber, 0, seconds: 4.0), partial: 1), atLeast, atMost);
    }

    [Fact]
    public void Upper_partials_die_sooner()
    {
        Performance note = Make.Note(5, 0, seconds: 4.0);
        Assert.True(DecaySeconds(note, partial: 8) < 0.6 * DecaySeconds(note, partial: 1));
    }

    [Fact]
    public void The_first_half_second_falls_faster_than_the_rest()
    {
        float[] samples = Offline.Render(s_guitar, Make.Note(1, 0, seconds: 6.0));
        double Level(double at) => Make.Decibels(Size(samples, at, 0.2));
        double early = (Level(0.1) - Level(0.9)) / 0.8;
        double late = (Level(3.5) - Level(5.5)) / 2.0;
        Assert.True(early > 1.3 * late, $"{early:0.0} dB/s, then {late:0.0} dB/s");
    }

    [Fact]
    public void Nut_clamp_and_finger_differ_in_decay_and_colour()
    {
        Contact[] contacts = [Contact.Nut, Contact.Clamp, Contact.Finger];
        double[] decays = [.. contacts.Select(contact => DecaySeconds(Make.Note(3, 2, contact, seconds: 3.0), partial: 1))];
        double[] bright = [.. contacts.Select(contact => Brightness(Offline.Render(s_guitar, Make.Note(3, 2, contact)), 0.3))];
        Assert.True(decays[0] > 1.08 * decays[1] && decays[1] > 1.15 * decays[2], string.Join(' ', decays));
        Assert.True(bright[0] > 1.02 * bright[1] && bright[1] > 1.02 * bright[2], string.Join(' ', bright));
    }

    [Fact]
    public void Harder_picking_is_louder_and_brighter()
    {
        float[] soft = Offline.Render(s_guitar, Make.Note(4, 0, strength: 0.3));
        float[] hard = Offline.Render(s_guitar, Make.Note(4, 0, strength: 1.0));
        Assert.InRange(Make.Decibels(Size(hard, 0.0, 1.0) / Size(soft, 0.0, 1.0)), 10.0, 25.0);
        Assert.True(Brightness(hard, 0.1) > 1.2 * Brightness(soft, 0.1));
    }

    [Fact]
    public void The_pick_thins_out_the_partials_with_a_node_under_it()
    {
        Performance note = Make.Note(4, 0);
        var atFifth = Performance.Of(note.Notes, 6, Pick.Of(0.2, 0.5).Value);
        var bins = Spectrum.Of(Offline.Render(s_guitar, atFifth), s_rate, 0.05, 0.5);
        double Level(int n) => Spectrum.Level(bins, s_rate, n * note.Notes[0].Pitch.Hertz());
        Assert.True(Level(5) < Level(4) - 15.0 && Level(5) < Level(6) - 15.0);
    }

    [Fact]
    public void Neighbouring_frets_are_alike_in_loudness()
    {
        for (int stringNumber = 1; stringNumber <= 6; stringNumber++)
        {
            double[] levels = [.. Enumerable.Range(0, 25).Select(fret => Make.Decibels(Size(Offline.Render(s_guitar, Make.Note(stringNumber, fret, Contact.Clamp, 1.0)), 0.0, 1.0)))];
            Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.InRange(pair.First - pair.Second, -2.0, 2.0));
            Assert.True(levels.Max() - levels.Min() < 7.0);
        }
    }

    [Theory]
    [InlineData("022100", 0.7)]
    [InlineData("022100", 1.0)]
    [InlineData("320003", 1.0)]
    [InlineData("000000", 1.0)]
    public void A_strum_keeps_below_full_scale_without_the_ceiling_and_has_no_offset(string fretting, double strength)
    {
        float[] samples = Offline.Render(s_guitar, Make.Strum(fretting, strength: strength, seconds: 3.0));
        Assert.InRange(samples.Max(Math.Abs), 0.1f, 0.75f);
        Assert.InRange(samples.Average(), -1e-5f, 1e-5f);
    }

    [Fact]
    public void Even_eight_hard_strings_at_once_stay_below_full_scale()
    {
        Voicing open = Make.Voicing("E1 B1 E2 A2 D3 G3 B3 E4", "00000000");
        PlayingStyle hard = PlayingStyle.Standard with { Strength = Strength.Of(1.0).Value };
        Assert.True(Offline.Render(s_guitar, Perform.Block(open, hard)).Max(Math.Abs) < 1f);
    }

    // A click is a jump that the sound around it does not explain: the second difference there against its usual size.
    [Theory]
    [InlineData("022100")]
    [InlineData("x02210")]
    public void Damping_and_ending_are_free_of_clicks(string fretting)
    {
        float[] samples = Offline.Render(s_guitar, Make.Strum(fretting, seconds: 0.6));
        int damp = (int)(0.55 * s_rate.Hertz);
        Assert.True(Jump(samples, damp, samples.Length / 2) < 1.5 * Jump(samples, damp - 4000, damp), "damping");
        Assert.True(samples[^2..].Max(Math.Abs) < 1e-4f, "the end");
        // The first frame rises from nothing no faster than the pluck itself does later on.
        float steepest = samples[..2000].Skip(2).Zip(samples, (later, sooner) => Math.Abs(later - sooner)).Max();
        Assert.True(samples[..2].Max(Math.Abs) < 0.5f * steepest, "the start");
    }

    [Fact]
    public void A_damped_strum_is_silent_half_a_second_later()
    {
        float[] samples = Offline.Render(s_guitar, Make.Strum(seconds: 0.6));
        Assert.True(Size(samples, 1.1, 0.1) < 0.001 * Size(samples, 0.3, 0.1));
    }

    [Fact]
    public void The_same_performance_gives_the_same_samples_however_it_is_read()
    {
        Performance strum = Make.Strum(seconds: 0.3);
        float[] whole = Offline.Render(s_guitar, strum);
        IRendering rendering = s_guitar.Start(strum, s_rate);
        var pieces = new List<float>();
        var random = new Random(7);
        var buffer = new float[2 * 300];
        for (int read = 1; read > 0;)
        {
            read = rendering.Read(buffer.AsSpan(0, 2 * random.Next(1, 300)));
            pieces.AddRange(buffer[..(2 * read)]);
        }

        Assert.Equal(whole, pieces);
    }

    [Fact]
    public void Reading_allocates_nothing()
    {
        IRendering rendering = s_guitar.Start(Make.Strum(), s_rate);
        var buffer = new float[2 * 441];
        rendering.Read(buffer);
        long before = GC.GetAllocatedBytesForCurrentThread();
        while (rendering.Read(buffer) > 0)
        {
        }

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    // Numbers below 1.18e-38 slow processors down many times over; filters that run on in silence must not fall that far.
    [Fact]
    public void Silence_leaves_no_denormal_numbers()
    {
        var body = new Body(s_rate);
        var room = new Room(s_rate);
        (float[] left, float[] right) = (new float[64], new float[64]);
        left[0] = right[0] = 0.5f;
        for (int block = 0; block < 20_000; block++)
        {
            body.Process(left, right);
            room.Process(left, right);
            Assert.DoesNotContain(left, float.IsSubnormal);
            Array.Clear(left);
            Array.Clear(right);
        }
    }

    [Fact]
    public void Strings_stand_from_left_to_right()
    {
        double Balance(int stringNumber)
        {
            float[] samples = Offline.Render(s_guitar, Make.Note(stringNumber, 0));
            double left = samples.Where((_, i) => i % 2 == 0).Sum(x => (double)x * x);
            double right = samples.Where((_, i) => i % 2 == 1).Sum(x => (double)x * x);
            return Math.Log2(left / right);
        }

        Assert.True(Balance(6) > Balance(1) + 0.3, $"{Balance(6):0.00} {Balance(1):0.00}");
    }

    [Fact]
    public void Every_pitch_of_every_string_renders_to_finite_samples()
    {
        for (int stringNumber = 1; stringNumber <= StringNumber.Most; stringNumber++)
        {
            for (int midi = 12; midi <= 127; midi += 5)
            {
                var note = new PlayedNote(StringNumber.Of(stringNumber), Theory.Pitch.FromMidi(midi), Fret.Nut, Contact.Nut, TimeSpan.Zero, TimeSpan.FromSeconds(0.1));
                float[] samples = Offline.Render(s_guitar, Performance.Of([note], 8));
                Assert.All(samples, sample => Assert.True(Math.Abs(sample) < 1f));
            }
        }
    }

    private static double DecaySeconds(Performance note, int partial)
    {
        float[] samples = Offline.Render(s_guitar, note);
        double hertz = StringBehaviour.Of(note.Notes[0], default).Partial(partial);
        double Level(double at) => Spectrum.Level(Spectrum.Of(samples, s_rate, at, 0.4), s_rate, hertz);
        return 60.0 * 1.8 / (Level(0.2) - Level(2.0));
    }

    private static double Size(float[] stereo, double fromSeconds, double seconds)
    {
        int from = 2 * (int)(fromSeconds * s_rate.Hertz);
        int count = Math.Min(2 * (int)(seconds * s_rate.Hertz), stereo.Length - from);
        return Math.Sqrt(stereo.AsSpan(from, count).ToArray().Average(x => (double)x * x));
    }

    // Size of the differences from sample to sample against the size of the samples: grows with the middle frequency.
    private static double Brightness(float[] stereo, double fromSeconds)
    {
        int from = (int)(fromSeconds * s_rate.Hertz);
        float[] left = [.. stereo.Where((_, i) => i % 2 == 0).Skip(from).Take(s_rate.Hertz / 2)];
        return Math.Sqrt(left.Zip(left.Skip(1)).Average(pair => Math.Pow(pair.Second - pair.First, 2.0)) / left.Average(x => (double)x * x));
    }

    private static double Jump(float[] stereo, int fromFrame, int toFrame)
    {
        double most = 0.0;
        for (int i = fromFrame + 2; i < toFrame; i++)
        {
            most = Math.Max(most, Math.Abs(stereo[2 * i] - (2.0 * stereo[2 * (i - 1)]) + stereo[2 * (i - 2)]));
        }

        return most;
    }
}
