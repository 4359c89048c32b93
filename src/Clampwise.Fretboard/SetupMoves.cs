using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>Setups made from setups by moving or turning their clamps. The home clamp stays the same one throughout.</summary>
internal static class SetupMoves
{
    public static Setup ToRig(Setup setup)
    {
        Fret beneath = setup.RigFret;
        if (beneath == Fret.Nut)
        {
            return setup;
        }

        IEnumerable<Clamp> above = setup.Clamps.Where(clamp => clamp.Fret > beneath);
        bool isNutHome = setup.HomeFret <= beneath;
        return Rebuilt(setup, above, clamp => clamp.At(Fret.Of(clamp.Fret - beneath)), isNutHome).Value;
    }

    public static Result<Setup> Moved(Setup setup, int frets)
    {
        Clamp? away = setup.Clamps.FirstOrDefault(clamp => clamp.Fret.Number + frets is < 1 or > Fret.Last);
        return away is null
            ? Rebuilt(setup, setup.Clamps, clamp => clamp.At(Fret.Of(clamp.Fret.Number + frets)), setup.Home is null)
            : FretboardWords.ClampMovedOff(away, frets);
    }

    public static Result<Setup> Turned(Setup setup) =>
        Rebuilt(setup, setup.Clamps, clamp => clamp.Mirrored(setup.StringCount), setup.Home is null);

    private static Result<Setup> Rebuilt(Setup setup, IEnumerable<Clamp> clamps, Func<Clamp, Clamp> change, bool isNutHome)
    {
        Clamp[] changed = [.. clamps.Select(change)];
        Result<Setup> made = isNutHome ? Setup.CreateFromNut(setup.Tuning, changed) : Setup.Create(setup.Tuning, changed, setup.Home is { } own ? change(own) : null);
        return made.Select(made => made.In(setup.GivenKey));
    }
}
