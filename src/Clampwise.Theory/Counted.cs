using System.Globalization;

namespace Clampwise.Theory;

/// <summary>Counts with a noun that agrees.</summary>
public static class Counted
{
    /// <summary>A count in digits with its noun: <c>1 time</c>, <c>20 questions</c>.</summary>
    /// <param name="number">The count, 0 or more.</param>
    /// <param name="noun">The noun for one.</param>
    /// <param name="many">The noun for any other number; with an s unless given.</param>
    public static string Of(long number, string noun, string? many = null) => $"{number.ToString(CultureInfo.InvariantCulture)} {Noun(number, noun, many)}";

    /// <summary>The noun alone.</summary>
    public static string Noun(long number, string noun, string? many = null) => number == 1 ? noun : many ?? noun + "s";
}
