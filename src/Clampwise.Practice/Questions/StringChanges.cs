using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What differs between two voicings, string by string.</summary>
public static class StringChanges
{
    /// <summary>
    /// The change in words, lowest string first: <c>string 2: D#4 (the third), not D4 (the minor third)</c>. Degrees of two roots
    /// are no comparison: where the roots differ, only the pitches are named.
    /// </summary>
    public static string InWords(Voicing right, Voicing answered)
    {
        bool isOneRoot = RootOf(right) is { } root && root == RootOf(answered);
        ImmutableArray<string> rightTexts = SpelledStrings.Of(right, isOneRoot);
        ImmutableArray<string> answeredTexts = SpelledStrings.Of(answered, isOneRoot);
        return string.Join("; ", Enumerable.Range(0, right.Strings.Length)
            .Where(index => right.Strings[index].Pitch != answered.Strings[index].Pitch)
            .Select(index => PracticeWords.StringDiffers(right.Strings[index].Number, rightTexts[index], answeredTexts[index])));
    }

    /// <summary>True if both sound the same pitches, on whatever strings.</summary>
    public static bool SoundAlike(Voicing one, Voicing other) => Sorted(one).SequenceEqual(Sorted(other));

    private static PitchClass? RootOf(Voicing voicing) => voicing.Sounding.First.Symbol?.Root.Class;

    private static IEnumerable<Pitch> Sorted(Voicing voicing) => voicing.Pitches.Order();
}
