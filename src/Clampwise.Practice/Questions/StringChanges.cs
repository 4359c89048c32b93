using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What differs between two voicings, string by string.</summary>
public static class StringChanges
{
    /// <summary>The strings that sound otherwise, or in only one of the two. Throws for voicings of different numbers of strings.</summary>
    public static StringSet Between(Voicing one, Voicing other)
    {
        if (one.Strings.Length != other.Strings.Length)
        {
            throw new ArgumentException("Voicings with different numbers of strings have no strings in common.", nameof(other));
        }

        return StringSet.Of(one.Strings.Zip(other.Strings).Where(pair => pair.First.Pitch != pair.Second.Pitch).Select(pair => pair.First.Number));
    }

    /// <summary>The change in words, lowest string first: <c>string 3: G#3, not A3</c>.</summary>
    public static string InWords(Voicing right, Voicing answered) => string.Join("; ", right.Strings.Zip(answered.Strings)
        .Where(pair => pair.First.Pitch != pair.Second.Pitch)
        .Select(pair => PracticeWords.StringDiffers(pair.First.Number, pair.First.Pitch, pair.Second.Pitch)));

    /// <summary>True if both sound the same pitches, on whatever strings.</summary>
    public static bool SoundAlike(Voicing one, Voicing other) => Sorted(one).SequenceEqual(Sorted(other));

    private static IEnumerable<Pitch> Sorted(Voicing voicing) => voicing.Pitches.Order();
}
