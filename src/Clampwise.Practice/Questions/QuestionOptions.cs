using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>How questions are put.</summary>
/// <param name="OffersNames">True if names are picked from choices instead of typed.</param>
/// <param name="ChoiceCount">How many choices there are, 2 or more.</param>
public sealed record QuestionOptions(bool OffersNames = false, int ChoiceCount = 4)
{
    /// <summary>Names typed, four choices elsewhere.</summary>
    public static QuestionOptions Usual { get; } = new();

    /// <summary>True with the guitar in hand: clamps are put on for real, one setup at a time, and a name is answered by playing it.</summary>
    public bool HasGuitar { get; init; }

    /// <summary>The player's hand: a shape that it cannot play is no answer.</summary>
    public Hand Hand { get; init; } = Hand.Medium;

    /// <summary>Why the hand could not play a voicing; null if it can.</summary>
    internal Fault? HandFault(Voicing voicing) =>
        Fingering.Of(voicing, Hand).TryGet(out _, out Fault? fault) ? null : PracticeWords.NoHand(fault);
}
