namespace Clampwise.Fretboard;

/// <summary>One string in two voicings of a setup.</summary>
/// <param name="First">In the first.</param>
/// <param name="Second">In the second.</param>
/// <param name="FirstNote">What it sounds in the first; null if it is muted.</param>
/// <param name="SecondNote">What it sounds in the second.</param>
public sealed record StringDifference(SoundingString First, SoundingString Second, string? FirstNote, string? SecondNote)
{
    /// <summary>Which string.</summary>
    public StringNumber Number => First.Number;

    /// <summary>True if the hand does something else with it.</summary>
    public bool IsMoved => First.Stop != Second.Stop;

    /// <summary>
    /// In words, each side with its name: <c>string 3: now fret 4 (B3), before rings from the clamp at 2 (A3)</c>.
    /// </summary>
    public string InWords(string first, string second) => $"string {Number}: {first} {Say(First, FirstNote)}, {second} {Say(Second, SecondNote)}";

    private static string Say(SoundingString sounding, string? note) => sounding switch
    {
        { Pitch: not { } } => "muted",
        { Stop.Finger: { } fret } => $"fret {fret} ({note})",
        { IsHeld: true } => $"rings from the clamp at {sounding.Ground} ({note})",
        _ => $"rings from the nut ({note})",
    };
}
