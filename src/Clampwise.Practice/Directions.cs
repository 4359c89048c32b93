using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What holds for each direction: its stable code in files, its words on a screen, and what it needs.</summary>
public static class Directions
{
    private static readonly ImmutableArray<(Direction Direction, string Code, string Title)> s_all =
    [
        (Direction.SeeShapeSayShapeName, "see-shape-name", "see a shape, say its shape name"),
        (Direction.SeeShapeSaySoundingName, "see-sounding-name", "see a shape, say its sounding name"),
        (Direction.NamePlaceShape, "place", "given a name, place the shape"),
        (Direction.HearSayName, "hear-name", "hear a voicing, name it"),
        (Direction.HearPickShape, "hear-pick", "hear a voicing, pick its shape"),
        (Direction.HearTwoCompare, "hear-compare", "hear two voicings, say what moved"),
        (Direction.ShapeNameSaySoundingName, "shape-to-sounding", "given a shape name, say how it sounds"),
        (Direction.SoundingNameSayShapeName, "sounding-to-shape", "given a sounding name, say the shape"),
        (Direction.ChangeInTime, "change", "change between two shapes in time"),
    ];

    /// <summary>All directions, in the order in which a learner usually meets them.</summary>
    public static ImmutableArray<Direction> All { get; } = [.. s_all.Select(entry => entry.Direction)];

    /// <summary>The directions in which a voicing is seen or heard and its name is the answer.</summary>
    public static ImmutableArray<Direction> Naming { get; } =
        [Direction.SeeShapeSayShapeName, Direction.SeeShapeSaySoundingName, Direction.HearSayName];

    /// <summary>The code that stands in files; it never changes.</summary>
    public static string Code(this Direction direction) => s_all[(int)direction].Code;

    /// <summary>In words.</summary>
    public static string Title(this Direction direction) => s_all[(int)direction].Title;

    /// <summary>True if the question is a sound, so that it cannot be asked without a sound device.</summary>
    public static bool NeedsSound(this Direction direction) =>
        direction is Direction.HearSayName or Direction.HearPickShape or Direction.HearTwoCompare;

    /// <summary>True if the question is about names alone, the same for every voicing with that shape name in the rig.</summary>
    public static bool IsNamesOnly(this Direction direction) =>
        direction is Direction.ShapeNameSaySoundingName or Direction.SoundingNameSayShapeName;

    /// <summary>True if a second voicing belongs to the question.</summary>
    public static bool NeedsPartner(this Direction direction) => direction is Direction.HearTwoCompare or Direction.ChangeInTime;

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
