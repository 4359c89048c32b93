using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// A shape in its rig, the thing that is remembered: it stays the same when the whole rig is moved along the neck by a full capo.
/// </summary>
/// <param name="Rig">
/// Setup text of the rig, with the tuning always as pitches, so that a tuning that gets a name later on leaves old texts as they are.
/// </param>
/// <param name="Shape">Fretting text counted from the home clamp: <c>^ x 0 2 4 0 0</c>.</param>
public sealed record ShapeKey(string Rig, string Shape)
{
    private const string Between = " | ";

    /// <summary>The key of a voicing.</summary>
    public static ShapeKey Of(Voicing voicing)
    {
        Setup rig = voicing.Setup.Rig;
        return new ShapeKey(RigText(rig), Lowered(voicing).ToHomeText(rig));
    }

    /// <summary>Rig text of a setup.</summary>
    public static string RigText(Setup setup)
    {
        Setup rig = setup.Rig;
        return string.Join(' ', rig.Tuning.Pitches) + rig.ToString()[rig.Tuning.ToString().Length..];
    }

    /// <summary>The voicing played in the rig itself, without a full capo beneath it.</summary>
    public Result<Voicing> InRig() => Setup.Parse(Rig).Then(rig => Voicing.Parse(rig, Shape, allowBehindClamp: true));

    /// <summary>Reads the text form.</summary>
    public static Result<ShapeKey> Parse(string text) => text.Split(Between) is [{ Length: > 0 } rig, { Length: > 0 } shape]
        ? new ShapeKey(rig, shape)
        : PracticeWords.BadShapeText(text);

    /// <summary>Rig and shape, as <c>E2 A2 D3 G3 B3 E4 + 2-4@2 | ^ x 0 2 4 0 0</c>.</summary>
    public override string ToString() => Rig + Between + Shape;

    // With the full capo taken off, every finger moves down by its fret: fingers never lie at or behind a full capo.
    private static Fretting Lowered(Voicing voicing)
    {
        Clamp? full = voicing.Setup.Clamps.LastOrDefault(clamp => clamp.IsFull);
        if (full is null)
        {
            return voicing.Fretting;
        }

        ImmutableArray<StringStop> stops =
            [.. voicing.Fretting.Stops.Select(stop => stop.Finger is { } finger ? StringStop.At(Fret.Of(finger - full.Fret)) : stop)];
        return Fretting.Of(stops.AsSpan());
    }
}
