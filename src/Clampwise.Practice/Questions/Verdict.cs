using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>What an answer was worth, and what it really was.</summary>
/// <param name="IsCorrect">True if it was right.</param>
/// <param name="Given">The answer as text; empty if the player did not know.</param>
/// <param name="Expected">The first right answer as text.</param>
/// <param name="RightVoicing">The right voicing: that of the drill.</param>
public sealed record Verdict(bool IsCorrect, string Given, string Expected, Voicing RightVoicing)
{
    /// <summary>True if the player said that they did not know.</summary>
    public bool DidNotKnow { get; init; }

    /// <summary>True if it was right in the main and not in full: the grade is at most strained.</summary>
    public bool IsPartly { get; init; }

    /// <summary>One sentence: with a right answer what else to know of it, with a wrong one what it was; null for nothing.</summary>
    public string? Remark { get; init; }

    /// <summary>
    /// What parts <see cref="Answered"/> from <see cref="RightVoicing"/>, string by string in a sentence, where the answer calls for it; null
    /// where it does not. Views that draw both, or say each string, leave it out.
    /// </summary>
    public string? WhatDiffers { get; init; }

    /// <summary>The voicing that the answer stands for: the shape placed or picked, or the nearest shape of the name given; null if none.</summary>
    public Voicing? Answered { get; init; }

    /// <summary>The strings that make the difference between <see cref="Answered"/> and <see cref="RightVoicing"/>.</summary>
    public StringSet Differing { get; init; }

    /// <summary>The shape that the right one was taken for; null if none is known.</summary>
    public ShapeKey? ConfusedWith { get; init; }

    /// <summary>How well it went by the player's own judgement, played on the guitar; null if the program judged.</summary>
    public Grade? OwnGrade { get; init; }

    /// <summary>Clean changes in a minute, if changes were counted.</summary>
    public int? ChangesPerMinute { get; init; }

    /// <summary>What to play after the verdict: what was answered beside the right one, or the right one alone if they are one.</summary>
    public ImmutableArray<Voicing> ToPlay => Answered is { } answered && !answered.Equals(RightVoicing) ? [answered, RightVoicing] : [RightVoicing];
}
