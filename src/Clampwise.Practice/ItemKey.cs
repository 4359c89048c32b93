using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>One shape asked in one direction: what has a memory of its own.</summary>
/// <param name="Shape">The shape in its rig.</param>
/// <param name="Direction">What is given and what is asked for.</param>
public sealed record ItemKey(ShapeKey Shape, Direction Direction)
{
    private const string Between = " | ";

    /// <summary>Reads the text form.</summary>
    public static Result<ItemKey> Parse(string text) => text.Split(Between) is [{ Length: > 0 } rig, { Length: > 0 } shape, var code]
        ? Directions.Parse(code).Select(direction => new ItemKey(new ShapeKey(rig, shape), direction))
        : PracticeWords.BadItemText(text);

    /// <summary>The one stable text form: <c>E2 A2 D3 G3 B3 E4 + 2-4@2 | ^ x 0 2 4 0 0 | hear-name</c>.</summary>
    public override string ToString() => Shape + Between + Direction.Code();
}
