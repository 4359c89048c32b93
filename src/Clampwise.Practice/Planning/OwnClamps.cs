using System.Globalization;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// The partial clamps that a player owns, by how many neighbouring strings each holds; a full capo is taken to be at hand. The default
/// names none, and stands for whatever a drill asks for.
/// </summary>
public readonly record struct OwnClamps
{
    private readonly int _widths;

    private OwnClamps(int widths) => _widths = widths;

    /// <summary>Whatever a drill asks for.</summary>
    public static OwnClamps Any => default;

    /// <summary>Clamps that hold so many strings each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is not 1 to <see cref="StringNumber.Most"/>.</exception>
    public static OwnClamps Of(params ReadOnlySpan<int> widths)
    {
        int all = 0;
        foreach (int width in widths)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(width, StringNumber.Most);
            all |= 1 << width;
        }

        return new OwnClamps(all);
    }

    /// <summary>How many strings each holds, rising; empty for whatever is asked for.</summary>
    public IEnumerable<int> Widths
    {
        get
        {
            int widths = _widths;
            return Enumerable.Range(1, StringNumber.Most).Where(width => (widths & (1 << width)) != 0);
        }
    }

    /// <summary>True if the setup can be clamped with these. Strings apart from each other take a clamp each.</summary>
    public bool Fit(Setup setup)
    {
        OwnClamps own = this;
        return this == Any || setup.Clamps.Where(clamp => !clamp.IsFull).SelectMany(RunsOf).All(width => (own._widths & (1 << width)) != 0);
    }

    /// <summary>Reads a list such as <c>3, 5</c>; an empty one is <see cref="Any"/>.</summary>
    public static Result<OwnClamps> Parse(string text)
    {
        int all = 0;
        foreach (string part in text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int width) || width < 1 || width > StringNumber.Most)
            {
                return PracticeWords.BadClampWidth(part);
            }

            all |= 1 << width;
        }

        return new OwnClamps(all);
    }

    /// <summary>The list that <see cref="Parse"/> reads.</summary>
    public override string ToString() => string.Join(", ", Widths);

    // The lengths of the runs of neighbouring strings.
    private static IEnumerable<int> RunsOf(Clamp clamp) => clamp.Strings.Strings
        .Select((number, place) => number.Number - place)
        .GroupBy(start => start)
        .Select(run => run.Count());
}
