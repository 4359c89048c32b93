using Clampwise.Application;
using Clampwise.Fretboard;

namespace Clampwise.Plain;

/// <summary>What the plain explorer says.</summary>
internal static class ExplorerText
{
    public const string Begin = "A fretboard to explore, line by line. Type help for what can be typed.";
    public const string End = "The end of exploring.";
    public const string NoStepBack = "There is no step to take back.";
    public const string NothingFound = "Nothing was found yet: find and a chord name looks for voicings.";

    /// <summary>The words in groups, each line one subject.</summary>
    public static IReadOnlyList<string> Help { get; } =
    [
        "A string: 3 fret 4 puts a finger there, counted from the nut; 3 fret ^2 counts from the home clamp. 3 mute, 3 ring. Several: 5,6 mute, ring 1-3. String 1 is the highest.",
        "The whole hand: x04600 from the nut or ^ x 0 2 4 0 0 from the home clamp, lowest string first. clear lets every string ring. undo takes the last change back.",
        "Where you are: Enter alone says both names, the hand and its difficulty; strings says every string; explain says all readings and what makes it hard.",
        "To hear: hear, hear 3 (one string), hear strings (one after another), hear slower, hear open (all open strings), hear open 3 (one of them, to tune by), hear before (the one before, then this one).",
        "To compare: compare says what differs from the one before, string by string; compare x04600 what differs from that one. mark marks what you hold; walk on, and compare mark says what differs from it.",
        "The setup: setup says it; setup 2-4@2 chooses another; setups lists those of the drills, setup and a number takes one; turn turns the clamps round; capo up, capo down, capo at 3, capo off move the full capo with all above it; tune says what each string should sound.",
        "The key: names are spelled in the key that the setup suggests; key says it, key F spells in another one, counted from the home clamp, key off goes back.",
        $"To find: find Dsus4 by shape name, find sounding Esus4, and more: find D top E keep 1-2 max-fret 7. The words are {FindLine.Words}; near alone means what you hold.",
        "What was found: next, back, take 3, found lists it. keep puts what you hold into your own drill of this setup. end ends.",
    ];

    /// <summary>Where the hand is after a step: names, the strings that changed, the fingers.</summary>
    public static IEnumerable<string> Step(ExplorerHand hand, Hand player)
    {
        if (hand is { At: { } at })
        {
            yield return $"Found {at + 1} of {hand.Found.Length}: {hand.Found[at].Telling}.";
        }

        yield return VoicingText.Names(hand.Held);
        foreach (string line in Changed(hand, player))
        {
            yield return line;
        }

        yield return VoicingText.OnTheHand(hand.Held, player);
    }

    /// <summary>A setup in full.</summary>
    public static IEnumerable<string> Setup(Setup setup)
    {
        var description = SetupDescription.Of(setup);
        yield return SetupWords.Held(setup);
        yield return $"Open strings, lowest first: {string.Join(' ', setup.GroundNames)}, which is {description.Spelling}; {description.Resemblance}.";
    }

    /// <summary>The key that names are spelled in.</summary>
    public static string Key(Setup setup) => setup.ShapeShift == 0
        ? $"Names are spelled in {setup.Key}."
        : $"Names are spelled in {setup.Key} counted from home, which sounds {setup.SoundingKey}.";

    /// <summary>What differs between what is held and another voicing.</summary>
    /// <param name="held">What is held.</param>
    /// <param name="other">The other one.</param>
    /// <param name="label">What the other one is called, in lower case.</param>
    public static IEnumerable<string> Compare(Voicing held, Voicing other, string label)
    {
        string where = held.Setup.Equals(other.Setup) ? "" : $" In {other.Setup}.";
        yield return VoicingText.NamesOf("Now", held);
        yield return $"{VoicingText.NamesOf(Capital(label), other)}{where}";
        if (held.Strings.Length != other.Strings.Length)
        {
            yield return "They have different numbers of strings: only the names can be compared.";
            yield break;
        }

        string[] lines = [.. VoicingText.Differences(held, other, label)];
        foreach (string line in lines)
        {
            yield return line;
        }

        int same = held.Strings.Length - lines.Length;
        yield return lines.Length == 0 ? "Nothing differs." : same == 0 ? "Every string differs." : $"{Capital(Spoken.Count(same, "string"))} the same in both.";
    }

    /// <summary>One voicing of a list of what was found.</summary>
    public static string Listed(FoundHand found, int index) =>
        $"{index + 1}: {Named(found.Whole.Voicing)}; {found.Telling}.";

    private static string Named(Voicing voicing) =>
        $"{voicing.Fretting.ToHomeText(voicing.Setup)}, from the nut {voicing.Fretting}: shape {voicing.ShapeName}, sounds {voicing.SoundingName}";

    // One string that changed is enough to say; in another setup, or from another shape altogether, every string is news.
    private static IEnumerable<string> Changed(ExplorerHand hand, Hand player)
    {
        string[] all = [.. VoicingText.Strings(hand.Held, player)];
        if (hand.Before is not { } before || !before.Setup.Equals(hand.Held.Setup))
        {
            return all;
        }

        return all.Where((_, index) => hand.Held.Strings[index].Stop != before.Strings[index].Stop);
    }

    private static string Capital(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}";
}
