using Clampwise.Fretboard;

namespace Clampwise.Application;

/// <summary>What the explorer asks the finder for, on the screen and line by line.</summary>
public static class Exploring
{
    /// <summary>Unless told otherwise: chords rather than fragments, and no more than one goes through. Our judgement.</summary>
    public static VoicingQuery Usual { get; } = new() { MinStrings = 4, Limit = 40 };
}
