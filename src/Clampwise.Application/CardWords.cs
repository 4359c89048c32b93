using Clampwise.Practice;

namespace Clampwise.Application;

/// <summary>What the cards of a session say, whatever face of the program shows them.</summary>
public static class CardWords
{
    /// <summary>What is to be done where the clamps go on or move.</summary>
    public static string Do(Card.ClampsMove card) =>
        card.Setup.Clamps.IsEmpty ? card.Before is null ? "No clamp: take it off if one is on, and tune." : "Take the clamp off, and let the strings down to pitch again."
        : card.Before is null ? "Put the clamp on, close behind the fret, no harder than a clean tone needs; then tune."
        : "Move the clamp; then tune.";

    /// <summary>That the clock of the session stands.</summary>
    public const string Clock = "The clock stands meanwhile.";

    /// <summary>The names of a new shape in a sentence.</summary>
    public static string Names(Card.NewShape card)
    {
        Fretboard.Voicing voicing = card.Item.Subject.Voicing;
        return voicing.Setup.Home is null || voicing.ShapeName == voicing.SoundingName
            ? $"New: {voicing.SoundingName}."
            : $"New: the shape {voicing.ShapeName}, sounds {voicing.SoundingName}.";
    }

    /// <summary>What is to be done with a new shape.</summary>
    public const string Play = "Play it, slowly, string by string; it is asked in a while.";
}
