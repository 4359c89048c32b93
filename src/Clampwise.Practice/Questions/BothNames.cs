using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// Four names in a row, each as far from the next as the clamp lifts: <c>C, D, E, F#</c> for a clamp at fret 2. Three of them have the
/// other name of their shape there, so that it tells nothing of the one that is asked.
/// </summary>
internal static class BothNames
{
    private const int Names = 4;
    private const int HalfOctave = 6;

    // How often a row is offered, by how many of its names are borne by shapes of the setup: of the others it could be told that they are
    // wrong, so the fewer there are the seldomer it comes (from what guessers made of it in the tests).
    private static readonly ImmutableArray<double> s_shares = [0, 0.02, 0.1, 0.4, 0.5];

    /// <summary>
    /// A row with the subject in it, by lot: its own hand on guitars tuned as much higher or lower, and called by what they sound. Empty if none is to be offered.
    /// </summary>
    /// <param name="subject">What is asked.</param>
    /// <param name="inSetup">The shapes of the setup.</param>
    /// <param name="asked">The side that is asked.</param>
    /// <param name="random">Chance.</param>
    public static ImmutableArray<Voicing> Row(Voicing subject, IEnumerable<DrillVoicing> inSetup, Func<Voicing, Sonority> asked, Random random)
    {
        int lift = subject.Setup.ShapeShift;
        if (Enumerable.Range(0, Names).Select(at => PitchClass.Of(at * lift)).Distinct().Count() < Names)
        {
            return [];
        }

        // The other name of a sounding name lies lower by the clamp's lift, that of a shape name higher.
        int step = asked(subject) == subject.Shape ? lift : -lift;
        int place = random.Next(Names - 1);
        Result<Voicing>[] row = [.. Enumerable.Range(0, Names).Select(at => Retuned(subject, (at - place) * step))];
        return row.All(voicing => voicing.IsGood) && random.NextDouble() < s_shares[row.Count(voicing => IsHeld(asked(voicing.Value)))]
            ? [.. row.Select(voicing => voicing.Value)]
            : [];

        bool IsHeld(Sonority name) => name == asked(subject) || (name.First.Symbol is { } symbol && inSetup.Any(shape => asked(shape.Voicing).First.Is(symbol)));
    }

    private static Result<Voicing> Retuned(Voicing voicing, int semitones)
    {
        int nearest = ((semitones % PitchClass.Count) + PitchClass.Count + HalfOctave) % PitchClass.Count - HalfOctave;
        Setup setup = voicing.Setup;
        return nearest == 0 ? voicing : setup.Tuning.Retuned(nearest)
            .Then(tuning => setup.Home is { } home ? Setup.Create(tuning, setup.Clamps, home) : Setup.CreateFromNut(tuning, setup.Clamps))
            .Then(moved => Voicing.Create(moved.In(setup.Key), voicing.Fretting, allowBehindClamp: true));
    }

    /// <summary>True if one name is the other one's on the other side.</summary>
    public static bool AreOne(Voicing one, Voicing other, Func<Voicing, Sonority> asked) => IsOtherOf(one, other, asked) || IsOtherOf(other, one, asked);

    private static bool IsOtherOf(Voicing one, Voicing other, Func<Voicing, Sonority> asked) =>
        asked(other).First.Symbol is { } symbol && (asked(one) == one.Shape ? one.Sounding : one.Shape).First.Is(symbol)
        && one.Setup.ShapeShift != 0;
}
