using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What holds for each direction: its stable code in files, its words on a screen, and what it needs.</summary>
public static class Directions
{
    private static readonly ImmutableArray<DirectionFacts> s_all =
    [
        new(Direction.SeeShapeSayShapeName, "see-shape-name", "see a shape, say its shape name", 4, 0) { Short = "shape name", IsNaming = true, AsksShapeName = true },
        new(Direction.SeeShapeSaySoundingName, "see-sounding-name", "see a shape, say its sounding name", 6, 0.6) { Short = "sounding name", IsNaming = true },
        new(Direction.NamePlaceShape, "place", "given a name, place the shape", 6, 0.4) { Short = "placing" },
        new(Direction.HearSayName, "hear-name", "hear a voicing, name it", 5, 1) { Short = "heard and named", IsNaming = true, NeedsSound = true },
        new(Direction.HearPickShape, "hear-pick", "hear a voicing, pick its shape", 5, 0.4) { Short = "heard and picked", NeedsSound = true, PicksShape = true },
        new(Direction.HearTwoCompare, "hear-compare", "hear two voicings, say what moved", 5, 0.6) { Short = "what moved", NeedsSound = true, NeedsPartner = true, Luck = 0.5 },
        new(Direction.ShapeNameSaySoundingName, "shape-to-sounding", "given a shape name, say how it sounds", 5, 0.4) { Short = "sounding from shape", IsNamesOnly = true },
        new(Direction.SoundingNameSayShapeName, "sounding-to-shape", "given a sounding name, say the shape", 5, 0.6) { Short = "shape from sounding", IsNamesOnly = true, AsksShapeName = true },
        new(Direction.ChangeInTime, "change", "change between two shapes in time", 5, 1) { Short = "change in time", NeedsPartner = true, IsInTime = true },
    ];

    /// <summary>All directions, in the order in which a learner usually meets them.</summary>
    public static ImmutableArray<Direction> All { get; } = [.. s_all.Select(entry => entry.Direction)];

    /// <summary>The directions in which a voicing is seen or heard and its name is the answer.</summary>
    public static ImmutableArray<Direction> Naming { get; } = [.. s_all.Where(facts => facts.IsNaming).Select(facts => facts.Direction)];

    /// <summary>The direction that a shape is first asked in.</summary>
    public static Direction First => s_all[0].Direction;

    /// <summary>The code that stands in files; it never changes.</summary>
    public static string Code(this Direction direction) => direction.Facts().Code;

    /// <summary>In words.</summary>
    public static string Title(this Direction direction) => direction.Facts().Title;

    /// <summary>In two or three words.</summary>
    public static string Short(this Direction direction) => direction.Facts().Short;

    /// <summary>True if the question is a sound, so that it cannot be asked without a sound device.</summary>
    public static bool NeedsSound(this Direction direction) => direction.Facts().NeedsSound;

    /// <summary>True if the question is about names alone, the same for every voicing with that shape name in the rig.</summary>
    public static bool IsNamesOnly(this Direction direction) => direction.Facts().IsNamesOnly;

    /// <summary>True if a second voicing belongs to the question.</summary>
    public static bool NeedsPartner(this Direction direction) => direction.Facts().NeedsPartner;

    /// <summary>True if the answer is one of several shapes.</summary>
    public static bool PicksShape(this Direction direction) => direction.Facts().PicksShape;

    /// <summary>True if it is played against the clock rather than known.</summary>
    public static bool IsInTime(this Direction direction) => direction.Facts().IsInTime;

    /// <summary>All that holds for a direction.</summary>
    internal static DirectionFacts Facts(this Direction direction) => s_all[(int)direction];

    /// <summary>Reads a code.</summary>
    public static Result<Direction> Parse(string code)
    {
        foreach (var entry in s_all)
        {
            if (entry.Code == code)
            {
                return entry.Direction;
            }
        }

        return PracticeWords.NoSuchDirection(code, s_all.Select(entry => entry.Code));
    }
}
