using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>Two voicings of one setup side by side: what the hand does otherwise on which string.</summary>
public sealed class VoicingComparison
{
    private VoicingComparison(Voicing first, Voicing second)
    {
        (First, Second) = (first, second);
        (ImmutableArray<string?> notes, ImmutableArray<string?> others) = (first.StringNotes, second.StringNotes);
        Strings = [.. first.Strings.Select((one, index) => new StringDifference(one, second.Strings[index], notes[index], others[index]))];
    }

    /// <summary>The voicing that is compared.</summary>
    public Voicing First { get; }

    /// <summary>The voicing that it is compared with.</summary>
    public Voicing Second { get; }

    /// <summary>Every string, lowest first.</summary>
    public ImmutableArray<StringDifference> Strings { get; }

    /// <summary>The strings with which the hand does something else.</summary>
    public StringSet Moved => StringSet.Of(Strings.Where(difference => difference.IsMoved).Select(difference => difference.Number));

    /// <summary>Compares two voicings. Throws if they are of different setups: there a fret means something else.</summary>
    public static VoicingComparison Of(Voicing first, Voicing second) => first.Setup.Equals(second.Setup)
        ? new VoicingComparison(first, second)
        : throw new ArgumentException($"{second.Setup} is another setup than {first.Setup}.", nameof(second));

    /// <summary>
    /// One line for each string that differs, lowest first, or one that says that none does.
    /// </summary>
    /// <param name="first">What the first voicing is called: <c>right</c>, <c>now</c>.</param>
    /// <param name="second">What the second is called: <c>yours</c>, <c>before</c>.</param>
    public IEnumerable<string> Lines(string first, string second) => Moved.Count == 0
        ? ["no string differs"]
        : Strings.Where(difference => difference.IsMoved).Select(difference => difference.InWords(first, second));
}
