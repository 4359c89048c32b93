using System.Globalization;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>Numbers and lists as they are said.</summary>
public static class Spoken
{
    private static readonly string[] s_numbers =
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>A number from 0 (<c>no</c>) to 12 as a word, others in digits.</summary>
    public static string Number(int number) =>
        number >= 0 && number < s_numbers.Length ? s_numbers[number] : number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A count with its noun: <c>one finger</c>, <c>four strings</c>.</summary>
    public static string Count(int number, string noun) => $"{Number(number)} {Counted.Noun(number, noun)}";

    /// <summary>How far and which way: <c>two semitones up</c>, <c>one semitone down</c>.</summary>
    public static string Semitones(int up) => $"{Count(Math.Abs(up), "semitone")} {(up < 0 ? "down" : "up")}";

    /// <summary>Things one after another: <c>1</c>, <c>1 and 6</c>, <c>1, 2 and 6</c>.</summary>
    public static string List(IReadOnlyList<string> things) => things.Count < 2
        ? string.Concat(things)
        : $"{string.Join(", ", things.SkipLast(1))} and {things[^1]}";

    /// <summary>Strings with their noun: <c>string 5</c>, <c>strings 1-2,6</c>, <c>no string</c>.</summary>
    public static string Strings(StringSet strings) => strings.Count switch
    {
        0 => "no string",
        1 => $"string {strings}",
        _ => $"strings {strings}",
    };
}
