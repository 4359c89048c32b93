using Clampwise.Fretboard;
using Clampwise.Sound.Performing;
using Clampwise.Theory;

namespace Clampwise.Sound.TuneUp;

/// <summary>What is played while tuning.</summary>
public static class TuningTones
{
    private static readonly TimeSpan s_ring = TimeSpan.FromSeconds(6.0);
    private static readonly TimeSpan s_step = TimeSpan.FromSeconds(0.45);
    private static readonly TimeSpan s_shortRing = TimeSpan.FromSeconds(0.9);

    /// <summary>A reference tone: one string as it should sound from its ground.</summary>
    public static Performance Reference(Setup setup, StringNumber number, ConcertPitch concertPitch = default) =>
        Together(setup, [number], concertPitch);

    /// <summary>The two strings of a pair at once, in tune or with the upper one off, so that its beating can be heard.</summary>
    public static Performance Pair(Setup setup, TuningPair pair, Cents upperOff = default, ConcertPitch concertPitch = default) =>
        Together(setup, [pair.Lower, pair.Upper], concertPitch).Detuned(pair.Upper, upperOff);

    /// <summary>The open strings one by one, then strummed together: what an ear needs to find the one that is out.</summary>
    public static Performance OneByOne(Setup setup, ConcertPitch concertPitch = default)
    {
        Voicing open = Voicing.Create(setup, Fretting.AllRinging(setup.StringCount)).Value;
        PlayingStyle style = PlayingStyle.Standard with { ConcertPitch = concertPitch };
        Performance one = Perform.Arpeggio(open, ArpeggioPattern.Upward, style with { ArpeggioStep = s_step, Ring = s_shortRing });
        return one.Then(Perform.Strum(open, StrumDirection.Down, style), one.End + style.Gap);
    }

    private static Performance Together(Setup setup, StringNumber[] strings, ConcertPitch concertPitch) => Performance.Of(
        strings.Select(number => new PlayedNote(
            number, setup.GroundPitch(number), setup.Ground(number), setup.IsHeld(number) ? Contact.Clamp : Contact.Nut, TimeSpan.Zero, s_ring)),
        setup.StringCount,
        concertPitch: concertPitch);
}
