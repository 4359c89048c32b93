using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>Where strings and frets of a lying fretboard are on its sheet; mirrored for a left-handed guitar.</summary>
/// <param name="plan">Its size.</param>
/// <param name="isLeftHanded">True to mirror it.</param>
internal sealed class LyingGrid(LyingPlan plan, bool isLeftHanded)
{
    /// <summary>The row of string 1.</summary>
    public int FirstRow { get; } = plan.HasLargeDots ? 2 : 1;

    /// <summary>The row of a string.</summary>
    public int Row(StringNumber number) => FirstRow + ((number.Number - 1) * plan.Spacing);

    /// <summary>The left column of a piece of board that begins so many columns from its end beside the nut.</summary>
    public int Column(int from, int width = 1) => LyingPlan.LabelWidth + (isLeftHanded ? plan.BoardWidth - from - width : from);

    /// <summary>The left column of what stands before the nut.</summary>
    public int State => Column(0, plan.StateWidth);

    /// <summary>The column of the nut.</summary>
    public int Nut => Column(plan.StateWidth);

    /// <summary>The left column of a fret with its wire.</summary>
    public int Cell(Fret fret) => Column(Start(fret), plan.Cell);

    /// <summary>The left column of a fret without its wire.</summary>
    public int Length(Fret fret) => Column(Start(fret), plan.Cell - 1);

    /// <summary>The column of a fret where fingers go.</summary>
    public int Middle(Fret fret) => Column(Start(fret) + plan.Middle);

    /// <summary>The column of a fret's wire.</summary>
    public int Wire(Fret fret) => Column(Start(fret) + plan.Cell - 1);

    /// <summary>The left column of a clamp's bar, just before the wire.</summary>
    public int Bar(Fret fret) => Column(Start(fret) + plan.Cell - 1 - plan.BarWidth, plan.BarWidth);

    private int Start(Fret fret) => plan.Neck + ((fret.Number - plan.Window.First) * plan.Cell);
}
