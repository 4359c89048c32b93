using System.Numerics;
using Clampwise.Fretboard;
using Clampwise.Sound.Files;
using Clampwise.Sound.Strings;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

public class PluckedPitchTests
{
    private static readonly PluckedGuitar s_guitar = new();

    public static TheoryData<int> Strings => [1, 2, 3, 4, 5, 6];

    // Equal temperament at A4 = 440 (ISO 16), measured by a discrete Fourier transform.
    [Theory]
    [MemberData(nameof(Strings))]
    public void Every_fret_is_within_a_cent_of_equal_temperament(int stringNumber)
    {
        for (int fret = 0; fret <= Fret.Last; fret++)
        {
            Performance note = Make.Note(stringNumber, fret, seconds: 1.3);
            Complex[] bins = Spectrum.Of(Offline.Render(s_guitar, note), SampleRate.Standard, 0.1, 1.1);
            double wanted = note.Notes[0].Pitch.Hertz();
            double off = Cents.Between(wanted, Spectrum.PeakNear(bins, SampleRate.Standard, wanted)).Value;
            Assert.True(Math.Abs(off) < 0.9, $"string {stringNumber} fret {fret}: {off:0.00} cents");
        }
    }

    // Frequencies of the open strings at A4 = 440, to a hundredth of a hertz, as any table of equal temperament gives them.
    [Theory]
    [InlineData(6, 82.41)]
    [InlineData(5, 110.00)]
    [InlineData(4, 146.83)]
    [InlineData(3, 196.00)]
    [InlineData(2, 246.94)]
    [InlineData(1, 329.63)]
    public void Open_strings_sound_the_standard_frequencies(int stringNumber, double hertz)
    {
        Complex[] bins = Spectrum.Of(Offline.Render(s_guitar, Make.Note(stringNumber, 0)), SampleRate.Standard, 0.1, 1.8);
        Assert.InRange(Cents.Between(hertz, Spectrum.PeakNear(bins, SampleRate.Standard, hertz)).Value, -0.9, 0.9);
    }

    // f_n = n f0 sqrt(1 + B n^2) (Fletcher and Rossing, The Physics of Musical Instruments), with the B that is asked for.
    [Theory]
    [InlineData(6, 0)]
    [InlineData(6, 12)]
    [InlineData(5, 3)]
    [InlineData(4, 0)]
    [InlineData(3, 7)]
    [InlineData(2, 0)]
    [InlineData(1, 5)]
    public void Partials_follow_the_stiff_string(int stringNumber, int fret)
    {
        Performance note = Make.Note(stringNumber, fret);
        StringBehaviour behaviour = StringVoice.Designed(note.Notes[0], note, SampleRate.Standard).String;
        Complex[] bins = Spectrum.Of(Offline.Render(s_guitar, note), SampleRate.Standard, 0.05, 1.0);
        double first = Spectrum.PeakNear(bins, SampleRate.Standard, behaviour.Hertz);
        for (int n = 2; n <= 10 && n * behaviour.Hertz < 2500.0; n++)
        {
            double expected = first * n * Math.Sqrt((1.0 + (behaviour.Inharmonicity * n * n)) / (1.0 + behaviour.Inharmonicity));
            double off = Cents.Between(expected, Spectrum.PeakNear(bins, SampleRate.Standard, expected)).Value;
            Assert.True(Math.Abs(off) < 1.5, $"partial {n}: {off:0.00} cents from the formula");
        }
    }

    [Theory]
    [InlineData(22_050)]
    [InlineData(48_000)]
    [InlineData(96_000)]
    [InlineData(192_000)]
    public void Pitch_does_not_depend_on_the_sample_rate(int hertz)
    {
        SampleRate rate = SampleRate.Of(hertz).Value;
        foreach ((int stringNumber, int fret) in new[] { (6, 0), (6, 24), (1, 0), (1, 24) })
        {
            Performance note = Make.Note(stringNumber, fret, seconds: 0.8);
            double wanted = note.Notes[0].Pitch.Hertz();
            Complex[] bins = Spectrum.Of(Offline.Render(s_guitar, note, rate), rate, 0.1, 0.55);
            Assert.InRange(Cents.Between(wanted, Spectrum.PeakNear(bins, rate, wanted)).Value, -0.95, 0.95);
        }
    }

    [Theory]
    [InlineData(415.0)]
    [InlineData(432.0)]
    [InlineData(466.0)]
    public void Concert_pitch_moves_every_string(double a4)
    {
        ConcertPitch concert = ConcertPitch.Of(a4).Value;
        Performance standard = Make.Note(5, 0);
        var moved = Performance.Of(standard.Notes, 6, concertPitch: concert);
        Complex[] bins = Spectrum.Of(Offline.Render(s_guitar, moved), SampleRate.Standard, 0.1, 1.5);
        Assert.InRange(Cents.Between(a4 / 4.0, Spectrum.PeakNear(bins, SampleRate.Standard, a4 / 4.0)).Value, -0.9, 0.9);
    }

    [Theory]
    [InlineData(-30)]
    [InlineData(3)]
    [InlineData(12.5)]
    public void A_detuned_string_is_out_by_so_many_cents(double cents)
    {
        Performance note = Make.Note(4, 2);
        double Measured(Performance performance) => Spectrum.PeakNear(
            Spectrum.Of(Offline.Render(s_guitar, performance), SampleRate.Standard, 0.1, 1.5), SampleRate.Standard, note.Notes[0].Pitch.Hertz());
        double off = Cents.Between(Measured(note), Measured(note.Detuned(StringNumber.Of(4), new Cents(cents)))).Value;
        Assert.InRange(off, cents - 0.1, cents + 0.1);
    }
}
