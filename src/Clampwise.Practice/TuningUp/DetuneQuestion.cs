using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>A setup heard with one string out of tune, as a clamp leaves it: which one, and which way?</summary>
/// <param name="Setup">The setup.</param>
/// <param name="String">The string that is out.</param>
/// <param name="Detune">By how much.</param>
public sealed record DetuneQuestion(Setup Setup, StringNumber String, Cents Detune)
{
    /// <summary>True if the string is sharp, false if it is flat.</summary>
    public bool IsSharp => Detune > Cents.None;

    /// <summary>A question, by seeded chance. Held strings come up twice as often: those are the ones that a clamp moves, mostly sharp.</summary>
    public static DetuneQuestion Ask(Setup setup, DetuneLadder ladder, Random random)
    {
        ImmutableArray<StringNumber> choices = [.. setup.Strings, .. setup.Strings.Where(setup.IsHeld)];
        StringNumber number = choices[random.Next(choices.Length)];
        double sharpShare = setup.IsHeld(number) ? 0.7 : 0.5;
        double cents = random.NextDouble() < sharpShare ? ladder.Step.Value : -ladder.Step.Value;
        return new DetuneQuestion(setup, number, new Cents(cents));
    }

    /// <summary>How an answer did.</summary>
    public DetuneVerdict Judge(StringNumber number, bool isSharp) => new(number == String, number == String && isSharp == IsSharp);
}
