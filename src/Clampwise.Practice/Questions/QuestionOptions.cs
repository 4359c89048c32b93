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

    /// <summary>Why a hand could not play a voicing; null if it can.</summary>
    public Func<Voicing, Fault?> HandFault { get; init; } = Hand.FaultOf;
}
