using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>One picked string, worked out before it sounds: its two loops, its pulse, when it starts and stops, and where it stands.</summary>
/// <param name="Start">The frame of the pick.</param>
/// <param name="Damp">The frame at which it is damped.</param>
/// <param name="End">The frame after which nothing of it is left to hear.</param>
/// <param name="Upright">The loop that moves toward the top of the body: louder and shorter.</param>
/// <param name="Level">The loop that moves along the top: softer and longer.</param>
/// <param name="Pulse">What the pick gives, gain included.</param>
/// <param name="Left">Share that goes left.</param>
/// <param name="Right">Share that goes right.</param>
internal sealed record StringVoice(
    long Start, long Damp, long End, LoopDesign Upright, LoopDesign Level, float[] Pulse, float Left, float Right)
{
    /// <summary>How long a hand takes to stop a string: the loss reaches its full size in this time.</summary>
    public const double HandSeconds = 0.012;

    /// <summary>Loss a pass under a damping hand, as the time to fall by 60 dB.</summary>
    public const double DampedDecaySeconds = 0.12;

    /// <summary>From the damping to silence: 120 dB at the loss above, and the hand's own time.</summary>
    public const double TailSeconds = 0.26;

    // Two-stage decay and slow beating from two polarisations that differ in loss and a little in pitch (measured in the trial of this
    // model: a third of a cent keeps the whole within 0.2 cent).
    private const double UprightDecay = 0.7;
    private const double LevelDecay = 1.35;
    private static readonly Cents s_halfApart = new(0.175);

    // So far may a tuner read a note above its first partial.
    private const double MostReadSharp = 1.3;

    // So that six strings picked as hard as they go stay below the ceiling.
    private const double FirmLevel = 0.062;

    // How far the outer strings stand to the sides, 0 to 1.
    private const double WidestPan = 0.4;

    /// <summary>How much of the pulse each loop gets, and how much of each loop reaches the body.</summary>
    public static (float Upright, float Level) Shares => (0.8f, 0.35f);

    /// <summary>The voice of a note.</summary>
    public static StringVoice Of(PlayedNote note, Performance performance, SampleRate rate)
    {
        (StringBehaviour @string, PickPulse pulse, NoteSpectrum spectrum) = Designed(note, performance, rate);
        double gain = FirmLevel * Math.Pow(note.Strength.Value / Strength.Standard.Value, 1.5) / spectrum.Size;
        long damp = rate.FrameAt(note.End);
        (float left, float right) = Pan(note, performance.StringCount);
        return new StringVoice(
            rate.FrameAt(note.Start),
            damp,
            damp + rate.FrameAt(TimeSpan.FromSeconds(TailSeconds)),
            LoopDesign.Of(@string, rate, -s_halfApart, UprightDecay),
            LoopDesign.Of(@string, rate, s_halfApart, LevelDecay),
            Array.ConvertAll(pulse.Samples(), sample => (float)(sample * gain)),
            left,
            right);
    }

    /// <summary>
    /// How the string of a note moves: no stiffer than lets a tuner read it within 1.3 cents of its first partial, and tuned so that the
    /// first partial and the reading lie on either side of the pitch.
    /// </summary>
    public static (StringBehaviour String, PickPulse Pulse, NoteSpectrum Spectrum) Designed(PlayedNote note, Performance performance, SampleRate rate)
    {
        var @string = StringBehaviour.Of(note, performance.ConcertPitch);
        var pulse = PickPulse.Of(performance.Pick, note.Strength, @string, rate);
        double sharp = NoteSpectrum.Of(@string, pulse, rate).ReadSharp.Value;
        double share = Math.Min(1.0, MostReadSharp / Math.Max(sharp, 1e-9));
        @string = @string with { Inharmonicity = share * @string.Inharmonicity, Lowered = new Cents(share * sharp / 2.0) };
        return (@string, pulse, NoteSpectrum.Of(@string, pulse, rate));
    }

    // Equal power, the lowest string a little to the left as the player hears it.
    private static (float Left, float Right) Pan(PlayedNote note, int stringCount)
    {
        double place = stringCount < 2 ? 0.0 : (2.0 * (note.String.Number - 1) / (stringCount - 1)) - 1.0;
        double angle = (1.0 - (WidestPan * place)) * Math.PI / 4.0;
        return ((float)Math.Cos(angle), (float)Math.Sin(angle));
    }
}
