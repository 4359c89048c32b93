using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>A page of a session that shows something and is not judged.</summary>
public abstract record Card
{
    private Card()
    {
    }

    /// <summary>The clamps move, or are put on: a block of questions in this setup follows. The clock of the session stands meanwhile.</summary>
    /// <param name="Setup">Where they go.</param>
    /// <param name="Before">Where they were; null at the beginning.</param>
    public sealed record ClampsMove(Setup Setup, Setup? Before) : Card;

    /// <summary>A shape that was never met, to be played before it is asked.</summary>
    /// <param name="Item">The shape, as the question that follows in a while asks it.</param>
    /// <param name="Like">A shape that was met and is nearly the same hand; null if there is none.</param>
    public sealed record NewShape(PracticeItem Item, LikeShape? Like) : Card;
}
