using Clampwise.Fretboard;
using Clampwise.Practice;

namespace Clampwise.Look;

/// <summary>Figures of progress in words, the same on the screen and in lines.</summary>
internal static class ProgressWords
{
    /// <summary>The figure that progress leads with.</summary>
    public static string StillHad(StillHad had) => had.Share is { } share
        ? $"still had on a later day: {had.Right} of {had.Of}, {share * 100:0} %"
        : "still had on a later day: no answer without choices yet";

    /// <summary>One shape taken for another: <c>D (^ 0 0 4 2 0 0) taken for Dm in 2 of 7</c>.</summary>
    public static string TakenFor(ConfusedShapes pair) =>
        $"{NameOf(pair.Asked)} ({pair.Asked.Shape}) taken for {NameOf(pair.Taken)} ({pair.Taken.Shape}), {pair.Times} in {pair.Askings}";

    /// <summary>A standing in one sign: a full dot for known, a ring for met, a point for unmet.</summary>
    public static char Sign(Standing standing, bool isAscii) => standing switch
    {
        Standing.Known => isAscii ? '#' : '●',
        Standing.Met => isAscii ? 'o' : '○',
        _ => isAscii ? '.' : '·',
    };

    private static string NameOf(ShapeKey shape) => shape.InRig().TryGet(out Voicing? voicing, out _) ? voicing.ShapeName : "a shape";
}
