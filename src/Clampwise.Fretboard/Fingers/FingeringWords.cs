using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>What a fingering costs, in words beside the points.</summary>
internal static class FingeringWords
{
    public static ImmutableArray<Price> Prices(Voicing voicing, CheapestVisitor.Assignment assignment)
    {
        int fingers = assignment.Groups.Length;
        int inside = MutedInside(voicing);
        (int beside, int behind) = AroundClamps(voicing.Setup, voicing.Fretting);
        var prices = new List<Price>
        {
            new(Spoken.Count(fingers, "finger"), assignment.Cost.Fingers),
            new(Barres(assignment), assignment.Cost.Barres),
            new("fingers crowded or stretched", assignment.Cost.Spread),
            new($"spread of {assignment.Strain:P0} of the reach", FingerCost.StrainPoints(assignment.Strain)),
            new($"{Spoken.Count(inside, "muted string")} between sounding ones", inside * FingerPrices.MutedInside),
            new($"{Spoken.Count(beside, "string")} fretted beside the clamp", beside * FingerPrices.BesideClamp),
            new($"{Spoken.Count(behind, "string")} fretted behind the clamp", behind * FingerPrices.BehindClamp),
        };
        return [prices[0], .. prices.Skip(1).Where(price => price.Points > 0.0)];
    }

    /// <summary>How many strings are fretted right beside a clamp's end, and how many behind a clamp that does not hold them.</summary>
    public static (int Beside, int Behind) AroundClamps(Setup setup, Fretting fretting)
    {
        int beside = 0, behind = 0;
        foreach (StringNumber number in setup.Strings)
        {
            if (fretting[number].Finger is { } finger)
            {
                bool isBehind = setup.ClampBeyond(number, finger) is not null;
                behind += isBehind ? 1 : 0;
                beside += !isBehind && FingerPrices.IsAtBarsEnd(setup, number, finger) ? 1 : 0;
            }
        }

        return (beside, behind);
    }

    public static string Place(FingerPlacement placement) => placement.IsBarre
        ? $"{placement.Finger.Mark()} at fret {placement.Fret} across {Spoken.Strings(placement.Across)}"
        : $"{placement.Finger.Mark()} at fret {placement.Fret} on {Spoken.Strings(placement.Strings)}";

    private static string Barres(CheapestVisitor.Assignment assignment) => string.Join(" and ", assignment.Groups
        .Where(group => group.IsBarre)
        .Select(group => $"barre across {Spoken.Count(group.Width, "string")}"));

    private static int MutedInside(Voicing voicing) =>
        StopPattern.MutedInside(StopPattern.Of(voicing.Setup, voicing.Fretting).Pattern, voicing.Setup.StringCount);
}
