using System.Text;

namespace Clampwise.Theory;

/// <summary>
/// House style of chord symbols: m, dim, aug, maj7, 6/9, m7b5, 7#5, sus4; one alteration stands bare after a number (7b9), everything
/// else in one pair of parentheses with commas: m(maj7), m(add9), 7(b9,#11), (b5), 7(no3). Nothing but a lone add follows a root bare,
/// so that no accidental of a degree is taken for one of the root.
/// </summary>
internal static class ChordQualityText
{
    private static readonly DegreeSet s_altered = ChordQualityParser.AlteredDominant;

    public static string Of(ChordQuality quality)
    {
        if (quality.Altered == s_altered && quality is { Triad: TriadKind.Major, Extent: ChordExtent.Seventh, Seventh: SeventhKind.Minor }
            && quality.Added.IsEmpty && quality.Omitted.IsEmpty)
        {
            return "7alt";
        }

        var text = new StringBuilder(Head(quality));
        List<string> rest = [.. Rest(quality)];
        if (IsBareAlteration(quality, text, rest) || IsBareAdd(quality, text, rest))
        {
            text.Append(rest[0]);
            rest.RemoveAt(0);
        }

        return rest.Count == 0 ? text.ToString() : text.Append('(').AppendJoin(',', rest).Append(')').ToString();
    }

    private static bool IsBareAlteration(ChordQuality quality, StringBuilder head, List<string> rest) =>
        rest.Count == 1 && !IsSuspended(quality) && head.Length > 0 && char.IsAsciiDigit(head[^1]) && rest[0][0] is 'b' or '#';

    // Cadd9 and Cadd4(add9), but C(add#11), whose sign would be taken for the root's.
    private static bool IsBareAdd(ChordQuality quality, StringBuilder head, List<string> rest) =>
        head.Length == 0 && rest.Count > 0 && rest[0].StartsWith("add", StringComparison.Ordinal) && quality.Added.First().Alteration == 0;

    private static bool IsSuspended(ChordQuality quality) => quality.Triad is TriadKind.Suspended2 or TriadKind.Suspended4;

    private static string Head(ChordQuality quality)
    {
        string number = Number(quality.Extent);
        bool hasMajorInParentheses = quality is { Seventh: SeventhKind.Major, IsMinor: true };
        string seventh = quality.Seventh == SeventhKind.Major ? "maj" + number : number;
        return quality.Triad switch
        {
            TriadKind.Minor => "m" + (hasMajorInParentheses ? "" : number),
            TriadKind.Diminished when IsWrittenAsMinor(quality) => "m" + number,
            TriadKind.Diminished => "dim" + (hasMajorInParentheses ? "" : number),
            TriadKind.Augmented when quality.Extent == ChordExtent.Triad => "aug",
            TriadKind.Suspended2 => seventh + "sus2",
            TriadKind.Suspended4 => seventh + "sus4",
            TriadKind.Power => "5",
            _ => seventh,
        };
    }

    private static IEnumerable<string> Rest(ChordQuality quality)
    {
        if (quality is { Seventh: SeventhKind.Major, IsMinor: true })
        {
            yield return "maj" + Number(quality.Extent);
        }

        foreach (ChordDegree altered in quality.Altered | WrittenFifth(quality))
        {
            yield return altered.Signs + altered.Number;
        }

        foreach (ChordDegree added in quality.Added)
        {
            yield return "add" + added.Signs + added.Number;
        }

        foreach (ChordDegree omitted in quality.Omitted)
        {
            yield return "no" + omitted.Number;
        }
    }

    // The fifth that the head does not say: m7b5, m6b5, 7#5, maj7#5.
    private static DegreeSet WrittenFifth(ChordQuality quality) => quality.Triad switch
    {
        TriadKind.Augmented when quality.Extent != ChordExtent.Triad => DegreeSet.Of(ChordDegree.Of(5, 1)),
        TriadKind.Diminished when IsWrittenAsMinor(quality) => DegreeSet.Of(ChordDegree.Of(5, -1)),
        _ => default,
    };

    private static bool IsWrittenAsMinor(ChordQuality quality) =>
        quality.Seventh == SeventhKind.Minor || quality.Extent is ChordExtent.Sixth or ChordExtent.SixthNinth;

    private static string Number(ChordExtent stack) => stack switch
    {
        ChordExtent.Sixth => "6",
        ChordExtent.SixthNinth => "6/9",
        ChordExtent.Seventh => "7",
        ChordExtent.Ninth => "9",
        ChordExtent.Eleventh => "11",
        ChordExtent.Thirteenth => "13",
        _ => "",
    };
}
