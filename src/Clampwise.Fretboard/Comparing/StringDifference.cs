namespace Clampwise.Fretboard;

/// <summary>One string in two voicings of a setup.</summary>
/// <param name="First">In the first.</param>
/// <param name="Second">In the second.</param>
public sealed record StringDifference(SoundingString First, SoundingString Second)
{
    /// <summary>Which string.</summary>
    public StringNumber Number => First.Number;

    /// <summary>True if the hand does something else with it.</summary>
    public bool IsMoved => First.Stop != Second.Stop;

    /// <summary>
    /// In words, each side with its name: <c>string 3: now fret 4 (B3), before rings from the clamp at 2 (A3)</c>.
    /// </summary>
    public string InWords(string first, string second) => $"string {Number}: {first} {Say(First)}, {second} {Say(Second)}";

    private static string Say(SoundingString sounding) => sounding switch
    {
        { Pitch: not { } } => "muted",
        { Stop.Finger: { } fret } => $"fret {fret} ({sounding.Pitch})",
        { IsHeld: true } => $"rings from the clamp at {sounding.Ground} ({sounding.Pitch})",
        _ => $"rings from the nut ({sounding.Pitch})",
    };
}
