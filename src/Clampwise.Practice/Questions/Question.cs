using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>An item put as a question: what is drawn, what is played, what is asked, and what help there is.</summary>
/// <param name="Item">The item.</param>
/// <param name="Form">The form of the answer.</param>
/// <param name="Ask">The question in one sentence.</param>
public sealed record Question(PracticeItem Item, AnswerForm Form, string Ask)
{
    /// <summary>The direction.</summary>
    public Direction Direction => Item.Key.Direction;

    /// <summary>The right voicing: that of the drill.</summary>
    public Voicing Subject => Item.Subject.Voicing;

    /// <summary>The setup to draw; always shown, also where no shape is.</summary>
    public Setup Setup => Item.Drill.Setup;

    /// <summary>The name given with the question; null if none is.</summary>
    public string? Given { get; init; }

    /// <summary>Shapes drawn with the question, in order; none where the shape is the answer.</summary>
    public ImmutableArray<Voicing> Drawn { get; init; } = [];

    /// <summary>Voicings played with the question, one after another.</summary>
    public ImmutableArray<Voicing> Played { get; init; } = [];

    /// <summary>What may be played before, at no cost, to set the ear: all strings of the setup ringing. Null if hearing is not asked.</summary>
    public Voicing? Reference { get; init; }

    /// <summary>The second voicing: the other one played, or the shape to change to. Null in most directions.</summary>
    public DrillVoicing? Partner { get; init; }

    /// <summary>Choices; empty if the answer is free.</summary>
    public ImmutableArray<Choice> Choices { get; init; } = [];

    /// <summary>Steps of help, the mildest first.</summary>
    public ImmutableArray<Hint> Hints { get; init; } = [];

    /// <summary>The chance of being right by luck, 0 to 1.</summary>
    public double GuessChance => Form switch
    {
        AnswerForm.Compare => 0.5,
        _ when Choices.Length > 0 => 1.0 / Choices.Length,
        _ => 0,
    };
}
