using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>
/// The qualities that a reading may have, in house style: every kind of MusicXML 4.0 that is a chord by its tones, and what players
/// write beyond (common practice). A reading is tried for each of them; <see cref="ReadingCosts"/> puts those that fit in order.
/// </summary>
internal static class ReadingVocabulary
{
    private static readonly string[] s_texts =
    [
        "", "m", "dim", "aug", "sus4", "sus2", "5", "(b5)", "(addb9,no3)", "(add#11,no3)",
        "add9", "m(add9)", "add4", "m(add4)", "(add4,add9)", "m(add4,add9)", "sus4(add9)", "(add#11)", "m(add#11)", "(addb9)", "m(addb9)",
        "(addb6)", "m(addb6)", "(add#9)", "(add9,add#11)", "dim(add9)", "aug(add9)", "dim(add4)", "(add4,addb9)", "m(add9,addb6)",
        "m(add4,addb6)", "(add9,addb6)", "sus4(addb9)", "sus2(add#11)", "sus4(addb6)", "sus2(addb6)", "m(add9,add#11)",
        "6", "m6", "6/9", "m6/9", "6sus4", "6sus2", "6/9sus4", "6(add4)", "m6(add4)", "6/9(add4)", "m6/9(add4)", "6#11", "6/9#11",
        "7", "m7", "maj7", "m(maj7)", "dim7", "m7b5", "dim(maj7)", "7#5", "maj7#5", "7b5", "maj7b5", "m7#5",
        "7sus4", "7sus2", "maj7sus4", "maj7sus2", "7(no3)", "maj7(no3)", "6(no3)",
        "7b9", "7#9", "7#11", "7b13", "maj7#11", "maj7#9", "m7b9", "m7b13", "m7#11", "maj7b13",
        "m(maj7,b13)", "m(maj7,#11)", "7(b9,#9)", "7(b5,b9)", "7(b5,#9)", "7(#5,b9)", "7(#5,#9)", "7(b9,#11)", "7(#9,#11)", "7(b9,b13)",
        "7(#9,b13)", "7(#11,b13)", "7sus4(b9)", "7sus4(b13)", "7sus4(b9,b13)", "7alt",
        "9", "m9", "maj9", "m(maj9)", "9sus4", "maj9sus4", "9#11", "maj9#11", "9b5", "9#5", "maj9#5", "m9b5", "9b13", "m9b13", "m9#11",
        "9(no3)", "maj9(no3)", "9sus4(b13)", "maj9b5", "maj9b13", "m(maj9,b13)", "m(maj9,#11)", "dim9", "dim(maj9)", "dim7(b13)", "dim11",
        "11", "m11", "maj11", "m(maj11)", "m11b5", "11b9", "m11b9", "m11b13", "11b13",
        "13", "m13", "maj13", "m(maj13)", "13sus4", "maj13sus4", "13b9", "13#9", "13#11", "maj13#11", "13b5",
        "13sus4(b9)", "m13b5", "13(b9,#11)",
        "13(#9,#11)", "m13#11",
    ];

    /// <summary>The qualities, each once.</summary>
    public static ImmutableArray<ChordQuality> Qualities { get; } = [.. s_texts.Select(text => ChordQuality.Parse(text).Value).Distinct()];

    /// <summary>What fits each quality, in the same order.</summary>
    public static ImmutableArray<ChordFit> Fits { get; } = [.. Qualities.Select(ChordFit.Of)];

    /// <summary>The number of sharps and flats aside, how dear each quality is, in the same order.</summary>
    public static ImmutableArray<int> Costs { get; } = [.. Qualities.Select(ReadingCosts.OfQuality)];
}
