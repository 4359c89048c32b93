using System.Globalization;
using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>What <c>find</c> asks for in the plain explorer: the query, and the frets that are looked at.</summary>
/// <param name="Query">The query.</param>
/// <param name="MaxFret">The highest fret for a finger; null for the usual one.</param>
internal sealed record FindLine(VoicingQuery Query, int? MaxFret)
{
    private static readonly HashSet<string> s_flags = ["unbroken", "behind", "moveable", "drone"];
    private static readonly HashSet<string> s_values =
        ["shape", "sounding", "degrees", "top", "bass", "ringing", "keep", "near", "hardest", "min-strings", "max-fret", "span", "limit", "position"];

    /// <summary>The words that a query is made of, for help texts.</summary>
    public static string Words => string.Join(", ", s_values.Concat(s_flags));

    /// <summary>
    /// Reads a query: words of the <c>find</c> command with what belongs to each, hyphens before them or not; a name that comes first
    /// is a shape name. <c>near</c> alone means the voicing that is held.
    /// </summary>
    public static Result<FindLine> Read(TypedLine line, Voicing held)
    {
        Result<FindLine> read = new FindLine(Exploring.Usual, null);
        int at = 1;
        while (at < line.Words.Count && read.IsGood)
        {
            string key = Key(line.Words[at]);
            bool isKey = s_values.Contains(key) || s_flags.Contains(key);
            int from = isKey ? at + 1 : at;
            int to = from;
            while (to < line.Words.Count && !s_flags.Contains(key) && !IsKey(line.Words[to]))
            {
                to++;
            }

            int column = from < line.Words.Count ? line.Words[from].Column : line.EndColumn;
            string value = to > from ? line.Text[(column - 1)..(line.Words[to - 1].Column - 1 + line.Words[to - 1].Text.Length)] : "";
            if (!isKey && at > 1)
            {
                return new Fault($"expected one of {Words}, found '{value}'", column);
            }

            read = read.Then(line => line.With(isKey ? key : "shape", value, held)).TryGet(out FindLine? next, out Fault? fault)
                ? next
                : fault with { Column = (fault.Column ?? 1) + column - 1 };
            at = to;
        }

        return read;
    }

    private Result<FindLine> With(string key, string value, Voicing held) => key switch
    {
        "shape" => TypedChord.Parse(value).Select(name => Asking(Query with { ShapeName = name })),
        "sounding" => TypedChord.Parse(value).Select(name => Asking(Query with { SoundingName = name })),
        "degrees" => DegreesWanted.Parse(value).Select(degrees => Asking(Query with { Degrees = degrees })),
        "top" => NoteWanted.Parse(value).Select(note => Asking(Query with { Top = note })),
        "bass" => NoteWanted.Parse(value).Select(note => Asking(Query with { Bass = note })),
        "keep" => StringSet.Parse(value, held.Setup.StringCount).Select(strings => Asking(Query with { KeepRinging = strings })),
        "near" => (value.Length == 0 ? held : Voicing.Parse(held.Setup, value, allowBehindClamp: true)).Select(near => Asking(Query with { Near = near })),
        "ringing" => Number(value).Select(number => Asking(Query with { MinRinging = number })),
        "min-strings" => Number(value).Select(number => Asking(Query with { MinStrings = number })),
        "max-fret" => Number(value).Select(number => this with { MaxFret = number }),
        "span" => Number(value).Select(number => Asking(Query with { Span = number })),
        "limit" => Number(value).Select(number => Asking(Query with { Limit = number })),
        "hardest" => double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double points)
            ? Asking(Query with { MaxDifficulty = points })
            : new Fault($"expected points of difficulty such as 3 or 4.5, found {Found(value)}"),
        "position" => Number(value).Then(FretOf).Select(fret => Asking(Query with { Position = fret })),
        "unbroken" => Asking(Query with { Unbroken = true }),
        "moveable" => Asking(Query with { IsMoveable = true }),
        "drone" => Asking(Query with { IsDrone = true }),
        _ => Asking(Query with { AllowBehindClamp = true }),
    };

    private FindLine Asking(VoicingQuery query) => this with { Query = query };

    private static Result<int> Number(string value) => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        ? number
        : new Fault($"expected a number, found {Found(value)}");

    private static Result<Fret> FretOf(int number) => number is >= 1 and <= Fret.Last
        ? Fret.Of(number)
        : new Fault($"expected a fret from 1 to {Fret.Last}, found {number}");

    private static string Found(string value) => value.Length == 0 ? "nothing" : $"'{value}'";

    private static bool IsKey(TypedWord word) => Key(word) is var key && (s_values.Contains(key) || s_flags.Contains(key));

    private static string Key(TypedWord word) => word.Plain.TrimStart('-');
}
