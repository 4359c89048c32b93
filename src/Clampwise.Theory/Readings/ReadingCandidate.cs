namespace Clampwise.Theory;

/// <summary>A name that fits a set of tones, counted from the bass so that it holds for every transposition.</summary>
/// <param name="RootAboveBass">Semitones from the bass up to the root: 0 to 11.</param>
/// <param name="QualityIndex">Place in <see cref="ReadingVocabulary.Qualities"/>.</param>
/// <param name="IsBassForeign">True if the bass is counted apart from the chord above it.</param>
/// <param name="Cost">The lower the sooner, before the exact pitches are looked at.</param>
internal readonly record struct ReadingCandidate(byte RootAboveBass, byte QualityIndex, bool IsBassForeign, short Cost)
{
    public ChordQuality Quality => ReadingVocabulary.Qualities[QualityIndex];
}
