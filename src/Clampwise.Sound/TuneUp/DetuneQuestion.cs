using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Sound.Performing;

namespace Clampwise.Sound.TuneUp;

/// <summary>A setup strummed with one string out of tune, as a clamp leaves it: which one, and which way?</summary>
/// <param name="Setup">The setup.</param>
/// <param name="String">The string that is out.</param>
/// <param name="Detune">By how much.</param>
/// <param name="ConcertPitch">What A4 is tuned to.</param>
public sealed record DetuneQuestion(Setup Setup, StringNumber String, Cents Detune, ConcertPitch ConcertPitch = default)
{
    /// <summary>True if the string is sharp, false if it is flat.</summary>
    public bool IsSharp => Detune > Cents.None;

    /// <summary>A question, by seeded chance. Held strings come up twice as often: those are the ones that a clamp moves, mostly sharp.</summary>
    public static DetuneQuestion Ask(Setup setup, DetuneLadder ladder, Random random, ConcertPitch concertPitch = default)
    {
        ImmutableArray<StringNumber> choices = [.. setup.Strings, .. setup.Strings.Where(setup.IsHeld)];
        StringNumber number = choices[random.Next(choices.Length)];
        double sharpShare = setup.IsHeld(number) ? 0.7 : 0.5;
        double cents = random.NextDouble() < sharpShare ? ladder.Step.Value : -ladder.Step.Value;
        return new DetuneQuestion(setup, number, new Cents(cents), concertPitch);
    }

    /// <summary>The question as it is heard: all strings one by one, then together.</summary>
    public Performance Performance() => InTune().Detuned(String, Detune);

    /// <summary>The same without the fault, to be heard after the answer.</summary>
    public Performance InTune()
    {
        Voicing open = Voicing.Create(Setup, Fretting.AllRinging(Setup.StringCount)).Value;
        PlayingStyle style = PlayingStyle.Standard with { ConcertPitch = ConcertPitch };
        Performance one = Perform.Arpeggio(open, ArpeggioPattern.Upward, style with { ArpeggioStep = TimeSpan.FromSeconds(0.45), Ring = TimeSpan.FromSeconds(0.9) });
        return one.Then(Perform.Strum(open, StrumDirection.Down, style), one.End + style.Gap);
    }

    /// <summary>How an answer did.</summary>
    public DetuneVerdict Judge(StringNumber number, bool isSharp) => new(number == String, number == String && isSharp == IsSharp);
}
