using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>A voicing, and what parts it from another, as plain sessions and the plain explorer say it.</summary>
internal static class VoicingText
{
    /// <summary>Both names and both notations in one sentence; without a clamp the two are one.</summary>
    public static string Names(Voicing voicing) =>
        voicing.Pitches.IsEmpty ? $"Every string is muted, {voicing.Fretting}."
        : voicing.Setup.Home is null ? $"Sounds {voicing.SoundingName}, played {voicing.Fretting}."
        : $"Shape name {voicing.ShapeName}, sounds {voicing.SoundingName}, played {voicing.Fretting.ToHomeText(voicing.Setup)}, from the nut {voicing.Fretting}.";

    /// <summary>The same after a colon.</summary>
    public static string NamesOf(string label, Voicing voicing)
    {
        string words = Names(voicing);
        return $"{label}: {char.ToLowerInvariant(words[0])}{words[1..]}";
    }

    /// <summary>Every string, lowest first, with fingers if the hand can.</summary>
    public static IEnumerable<string> Strings(Voicing voicing, Hand hand) =>
        VoicingWords.Lines(voicing, Fingering.Of(voicing, hand).TryGet(out Fingering? fingering, out _) ? fingering : null);

    /// <summary>Which finger goes where and how hard it is, or why no hand can.</summary>
    public static string OnTheHand(Voicing voicing, Hand hand) =>
        !voicing.Fretting.Stops.Any(stop => stop.IsFretted) ? "No finger is down."
        : Fingering.Of(voicing, hand).TryGet(out Fingering? fingering, out Fault? fault) ? $"Fingers: {fingering}; difficulty {fingering.Difficulty:0.0}."
        : $"No hand for it: {fault.Message}.";

    /// <summary>
    /// One line for each string that the hand stops or that sounds otherwise: <c>string 4: finger at fret 6, G#3, the third; before:
    /// finger at fret 5, G3, the minor third</c>. Degrees of two roots bear the name of their chord: <c>the root of G</c>. Both must
    /// have the same number of strings.
    /// </summary>
    /// <param name="one">The one that comes first on each line.</param>
    /// <param name="other">The one that it is compared with.</param>
    /// <param name="label">What <paramref name="other"/> is called.</param>
    public static IEnumerable<string> Differences(Voicing one, Voicing other, string label)
    {
        bool isOneSetup = one.Setup.Equals(other.Setup);
        bool isOneRoot = one.Sounding.First.Symbol?.Root.Class == other.Sounding.First.Symbol?.Root.Class;
        string[] ours = Lines(one, isOneRoot);
        string[] theirs = Lines(other, isOneRoot);
        return Enumerable.Range(0, ours.Length)
            .Where(index => Differ(one.Strings[index], other.Strings[index]))
            .Select(index => $"string {one.Strings[index].Number}: {Said(ours[index], isOneSetup)}; {label}: {Said(theirs[index], isOneSetup)}");
    }

    private static string[] Lines(Voicing voicing, bool isOneRoot)
    {
        string chord = isOneRoot || voicing.Sounding.First.Symbol is null ? "" : $" of {voicing.SoundingName}";
        return [.. VoicingWords.Lines(voicing).Zip(voicing.Strings, (line, sounding) => sounding.Pitch is null ? line : $"{line}{chord}")];
    }

    private static bool Differ(SoundingString one, SoundingString other) => one.Stop != other.Stop || one.Pitch != other.Pitch;

    // The number stands first on the line; what holds the string is the same for both in one setup.
    private static string Said(string line, bool isOneSetup)
    {
        string words = line.Split(' ', 3)[2];
        return isOneSetup && words.Split(", ", 2) is [_, var rest] ? rest : words;
    }
}
