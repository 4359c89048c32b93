using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// A whole rig on a full capo: everything above it moves along, so shapes keep their names and sounding names move by as many
/// semitones as the capo moves frets.
/// </summary>
public static class FullCapo
{
    /// <summary>The setup with its full capo moved by so many frets, put on, or at fret 0 taken off; refused off the neck.</summary>
    public static Result<Setup> Move(Setup setup, int frets)
    {
        Setup rig = setup.Rig;
        int target = setup.RigFret.Number + frets;
        if (target < 0)
        {
            return setup.RigFret == Fret.Nut ? FretboardWords.NoFullCapo() : FretboardWords.FullCapoBelowNut(setup.RigFret, -frets);
        }

        if (target > Fret.Last)
        {
            return FretboardWords.FretOffNeckFor("the full capo", target);
        }

        if (target == 0)
        {
            return rig;
        }

        var full = Clamp.Full(Fret.Of(target), setup.StringCount);
        return rig.MovedBy(target).Then(above => Setup.Create(setup.Tuning, [full, .. above.Clamps], above.Home ?? full)).Select(moved => moved.In(setup.GivenKey));
    }

    /// <summary>The rig with a hand in it, both moved along with the full capo; refused off the neck.</summary>
    public static Result<(Setup Setup, Fretting Fretting)> Move(Setup setup, Fretting fretting, int frets) =>
        Move(setup, frets).Then(rig => Along(fretting, frets).Select(moved => (rig, moved)));

    /// <summary>A fretting moved along with the capo, so that the shape stays the same; refused if a finger would leave the neck.</summary>
    public static Result<Fretting> Along(Fretting fretting, int frets)
    {
        Span<StringStop> stops = stackalloc StringStop[fretting.StringCount];
        for (int index = 0; index < stops.Length; index++)
        {
            StringStop stop = fretting[index];
            if (stop.Finger is { } finger && finger.Number + frets is < 1 or > Fret.Last)
            {
                return FretboardWords.FretOffNeckFor($"the finger on string {StringNumber.AtIndex(index, stops.Length)}", stop.Finger!.Value.Number + frets);
            }

            stops[index] = stop.Finger is { } at ? StringStop.At(Fret.Of(at.Number + frets)) : stop;
        }

        return Fretting.Of(stops);
    }
}
