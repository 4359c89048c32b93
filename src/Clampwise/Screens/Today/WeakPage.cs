using System.Collections.Immutable;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens.Session;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>The weak shapes, each with its reason, and their review.</summary>
internal sealed class WeakPage(Frame frame, ScreenDesk desk) : Page
{
    private ImmutableArray<WeakShape> Weak => WeakShapes.Find(desk.Repertoire.Items, desk.Record.Memory, desk.Today, desk.Repertoire);

    public override string Title => "weak shapes";

    public override IReadOnlyList<PageKey> Keys =>
        [.. Weak.IsEmpty ? Array.Empty<PageKey>() : [PageKey.On(KeyPress.Enter, "review them", Review)], PageKey.On(KeyPress.Esc, "back", frame.Close)];

    public override IReadOnlyList<string> Help { get; } =
    [
        "A shape counts as weak by how likely it is to be missed tomorrow: by the recall foreseen, misses, slow answers, and what it is taken for. What is known, or was right at the usual pace the last time, is never called so. Each line says why.",
    ];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        ImmutableArray<WeakShape> weak = Weak;
        return weak.IsEmpty
            ? [Line.Empty, Line.Of("Nothing is weak just now.", Tone.Strong), .. Line.Wrap("Shapes that are missed, slow or taken for others gather here.", width, Tone.Quiet)]
            : [Line.Empty, .. weak.Take(Math.Max(1, (height - 1) / 2)).SelectMany(shape => Lines(shape, width))];
    }

    private void Review()
    {
        SessionPlan plan = WeakPlanner.Plan(desk.Request());
        frame.Replace(plan.IsEmpty ? new WeakPage(frame, desk) : WaitingPage.ToStart(frame, desk, plan));
    }

    private static IEnumerable<Line> Lines(WeakShape weak, int width) =>
    [
        Line.Of($"{weak.Item.Subject.Voicing.ShapeName,-10}", Tone.Strong)
            .And($" {weak.Item.Subject.Voicing.Fretting.ToHomeText(weak.Item.Drill.Setup)}")
            .And($"   {weak.Item.Drill.Setup}", Tone.Held),
        .. Line.Wrap(weak.Line, width - 11, Tone.Quiet).Take(1).Select(line => line.Indent(11)),
    ];
}
