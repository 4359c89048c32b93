using Clampwise.Fretboard;

namespace Clampwise.Application;

/// <summary>A setup said in words: where the clamps are, which strings they hold, what the open strings sound.</summary>
public static class SetupWords
{
    private const int ShortestRun = 3;

    /// <summary>All of it.</summary>
    public static IEnumerable<string> Lines(Setup setup) => [Held(setup), Open(setup)];

    /// <summary>Which strings are held where, and which are free; nothing of what they sound.</summary>
    public static string Held(Setup setup) => setup.Clamps.IsEmpty
        ? $"Setup {setup}: no clamp, every string free."
        : $"Setup {setup}: {string.Join(", ", setup.Clamps.Select(clamp => ClampWords(setup, clamp)))}; {Free(setup)}.";

    /// <summary>What every string rings with no finger on it, lowest first.</summary>
    public static string Open(Setup setup) => $"Open strings, lowest first: {string.Join(' ', setup.GroundNames)}.";

    /// <summary>Strings as they are said: <c>string 3</c>, <c>strings 3 to 5</c>, <c>strings 1, 2 and 6</c>, <c>no string</c>.</summary>
    public static string Said(StringSet strings)
    {
        int[] all = [.. strings.Strings.Select(number => number.Number)];
        bool isRun = all.Length >= ShortestRun && all[^1] - all[0] == all.Length - 1;
        return all switch
        {
            [] => "no string",
            [var only] => $"string {only}",
            _ when isRun => $"strings {all[0]} to {all[^1]}",
            [.. var most, var last] => $"strings {string.Join(", ", most)} and {last}",
        };
    }

    private static string ClampWords(Setup setup, Clamp clamp)
    {
        string home = setup.Clamps.Length > 1 && clamp == setup.Home ? ", the home clamp" : "";
        string idle = setup.IdleClamps.Contains(clamp) ? ", idle: higher clamps hold every string of it" : "";
        return clamp.IsFull ? $"a full capo at fret {clamp.Fret}{home}{idle}" : $"a clamp at fret {clamp.Fret} over {Said(clamp.Strings)}{home}{idle}";
    }

    private static string Free(Setup setup) => $"{Said(setup.FreeStrings)} free";
}
