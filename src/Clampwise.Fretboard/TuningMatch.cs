namespace Clampwise.Fretboard;

/// <summary>A named tuning that some open strings share the intervals of.</summary>
/// <param name="Named">The named tuning.</param>
/// <param name="SemitonesUp">How far the open strings lie above it; negative if below.</param>
public sealed record TuningMatch(NamedTuning Named, int SemitonesUp)
{
    /// <summary>In words, such as <c>same intervals as drop D, two semitones up</c>.</summary>
    public override string ToString() => SemitonesUp == 0
        ? $"same pitches as {Named.Name}"
        : $"same intervals as {Named.Name}, {Spoken.Semitones(SemitonesUp)}";
}
