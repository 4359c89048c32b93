using System.Collections.Immutable;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>The map of shapes: what is known of each, by both names, to place and by ear, in as many columns as there is room for.</summary>
internal sealed class MapPage(Frame frame, ScreenDesk desk) : Page
{
    private const int NameWidth = 10;
    private const int Column = NameWidth + 7;
    private int _top;

    public override string Title => "map of shapes";

    public override IReadOnlyList<PageKey> Keys => [PageKey.Scroll(by => _top += by), PageKey.On(KeyPress.Esc, "back", frame.Close)];

    public override IReadOnlyList<string> Help { get; } =
    [
        "Each shape of the drills that you have begun, with four signs: its shape name, its sounding name, placing it, naming it by ear. A full sign is known: answered without choices and without help on two later days, and not missed since. An open one was asked, a point not yet.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        ImmutableArray<MappedShape> shapes = ShapeMap.Of(desk.Shelf.Everything, desk.Record.Memory);
        if (shapes.IsEmpty)
        {
            return [Line.Empty, Line.Of("No shape was asked yet.", Tone.Strong)];
        }

        Line[] lines = [Legend(), Line.Of($"{Known(shapes)} of {4 * shapes.Length} known", Tone.Strong), .. shapes.GroupBy(shape => $"{shape.Shape.Drill.Setup}").SelectMany(setup => Block(setup.Key, [.. setup], width))];
        _top = Math.Clamp(_top, 0, Math.Max(0, lines.Length - height));
        return lines[_top..];
    }

    private IEnumerable<Line> Block(string setup, MappedShape[] shapes, int width) => shapes.Chunk(Math.Max(1, width / Column))
        .Select(row => row.Aggregate(Line.Empty, (line, shape) => line.And($"{Cut(shape.Shape.Subject.Voicing.ShapeName),-NameWidth} ").And(Signs(shape), Tone.Right).And("  ")))
        .Prepend(Line.Of(setup, Tone.Held));

    private Line Legend() => Line.Of($"name, sounding, place, hear: {Sign(Standing.Known)} known {Sign(Standing.Met)} met {Sign(Standing.Unmet)} not yet", Tone.Quiet);

    private string Signs(MappedShape shape) => string.Concat(All(shape).Select(Sign));

    private char Sign(Standing standing) => ProgressWords.Sign(standing, desk.Glyphs == GlyphSet.Ascii);

    private static Standing[] All(MappedShape shape) => [shape.ShapeName, shape.SoundingName, shape.Place, shape.Hear];

    private static int Known(IEnumerable<MappedShape> shapes) => shapes.Sum(shape => All(shape).Count(standing => standing == Standing.Known));

    private static string Cut(string name) => name.Length > NameWidth ? name[..NameWidth] : name;
}
