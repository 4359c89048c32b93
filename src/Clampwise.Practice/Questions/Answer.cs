using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>What the player answered.</summary>
public abstract record Answer
{
    private Answer()
    {
    }

    /// <summary>A chord name as it was typed.</summary>
    public sealed record Name(string Text) : Answer;

    /// <summary>A shape placed on the fretboard.</summary>
    public sealed record Placed(Fretting Fretting) : Answer;

    /// <summary>A shape played on the guitar, and how well it went by the player's own judgement.</summary>
    public sealed record Played(Grade Grade) : Answer;

    /// <summary>A choice by its index, from 0.</summary>
    public sealed record Chosen(int Index) : Answer;

    /// <summary>Two voicings compared.</summary>
    /// <param name="IsSame">True for 'the same'.</param>
    /// <param name="Moved">The strings that moved; empty if none was named.</param>
    public sealed record Compared(bool IsSame, StringSet Moved) : Answer;

    /// <summary>Clean changes made in one minute, as the player counted or as they were heard; 0 or more.</summary>
    public sealed record Changes(int Count) : Answer;

    /// <summary>The player does not know; always offered.</summary>
    public sealed record NotKnown : Answer;
}
