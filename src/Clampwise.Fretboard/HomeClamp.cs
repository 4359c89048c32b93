using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// The partial clamps of a setup one step at a time, as a hand would set them: the home clamp slides along the neck or across the
/// strings, holds more or fewer of them, or another clamp becomes home. What no neck or clamp allows is refused as by
/// <see cref="Setup.Create"/>.
/// </summary>
public static class HomeClamp
{
    // A clamp over three strings in the middle is the one sold most (common practice, no source).
    private const int UsualWidth = 3;
    private const int UsualFrets = 2;

    /// <summary>The home clamp so many frets farther up the neck, or down.</summary>
    public static Result<Setup> Along(Setup setup, int frets) => Change(setup, home =>
        home.Fret.Number + frets is var fret and >= 1 and <= Fret.Last
            ? home.At(Fret.Of(fret))
            : FretboardWords.ClampMovedOff(home, frets));

    /// <summary>The home clamp so many strings farther towards the lowest one, or with a negative number towards the highest.</summary>
    public static Result<Setup> Across(Setup setup, int strings) => Change(setup, home =>
        Ends(home) is var (first, last) && first + strings >= 1 && last + strings <= setup.StringCount
            ? Over(home, home.Strings.Strings.Select(number => number.Number + strings), setup)
            : FretboardWords.ClampMovedOver(home, setup.StringCount));

    /// <summary>The home clamp over one string more, at its low side or, at the edge, its high side.</summary>
    public static Result<Setup> Wider(Setup setup) => Change(setup, home =>
    {
        (int first, int last) = Ends(home);
        return last < setup.StringCount ? Over(home, Range(first, last + 1), setup)
            : first > 1 ? Over(home, Range(first - 1, last), setup)
            : FretboardWords.ClampMovedOver(home, setup.StringCount);
    });

    /// <summary>The home clamp over one string fewer, at its low side.</summary>
    public static Result<Setup> Narrower(Setup setup) => Change(setup, home =>
    {
        (int first, int last) = Ends(home);
        return first < last ? Over(home, Range(first, last - 1), setup) : FretboardWords.ClampHoldsNothing(home.Fret);
    });

    /// <summary>One more partial clamp, three strings wide and two frets above the highest clamp; it becomes home.</summary>
    public static Result<Setup> Added(Setup setup)
    {
        int fret = setup.Clamps.Select(clamp => clamp.Fret.Number).DefaultIfEmpty(0).Max() + UsualFrets;
        if (fret > Fret.Last)
        {
            return FretboardWords.FretOffNeckFor("another clamp", fret);
        }

        int first = Math.Max(1, (setup.StringCount - UsualWidth + 2) / 2);
        var added = Clamp.Create(StringSet.Of(Range(first, Math.Min(first + UsualWidth - 1, setup.StringCount)).Select(StringNumber.Of)), Fret.Of(fret), setup.StringCount).Value;
        return Setup.Create(setup.Tuning, [.. setup.Clamps, added], added);
    }

    /// <summary>The setup without its home clamp; the last partial clamp that is left becomes home. With none it stays as it is.</summary>
    public static Result<Setup> Removed(Setup setup) => setup.Home is { } home
        ? Setup.Create(setup.Tuning, setup.Clamps.Where(clamp => clamp != home))
        : setup;

    /// <summary>The next clamp up the neck becomes home, after the last one the first.</summary>
    public static Result<Setup> Next(Setup setup)
    {
        ImmutableArray<Clamp> clamps = setup.Clamps;
        return clamps.IsEmpty ? setup : Setup.Create(setup.Tuning, clamps, clamps[(setup.Home is { } home ? clamps.IndexOf(home) + 1 : 0) % clamps.Length]);
    }

    private static Result<Setup> Change(Setup setup, Func<Clamp, Result<Clamp>> change) => setup.Home is not { IsFull: false } home
        ? FretboardWords.NoPartialHome(setup)
        : change(home).Then(changed => Setup.Create(setup.Tuning, setup.Clamps.Select(clamp => clamp == home ? changed : clamp), changed));

    private static (int First, int Last) Ends(Clamp clamp) => (clamp.Strings.Strings.First().Number, clamp.Strings.Strings.Last().Number);

    private static IEnumerable<int> Range(int first, int last) => Enumerable.Range(first, last - first + 1);

    private static Clamp Over(Clamp clamp, IEnumerable<int> strings, Setup setup) =>
        Clamp.Create(StringSet.Of(strings.Select(StringNumber.Of)), clamp.Fret, setup.StringCount).Value;
}
