using System.Globalization;

namespace Clampwise.Practice;

/// <summary>Counts in digits, with a noun that agrees.</summary>
public static class Counted
{
    /// <summary>A count with its noun: <c>1 time</c>, <c>20 questions</c>.</summary>
    /// <param name="number">The count, 0 or more.</param>
    /// <param name="noun">The noun for one; its plural takes an s.</param>
    public static string Of(int number, string noun) => $"{number.ToString(CultureInfo.InvariantCulture)} {noun}{(number == 1 ? "" : "s")}";
}
