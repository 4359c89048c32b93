using BenchmarkDotNet.Attributes;
using Clampwise.Charts;
using Clampwise.Fretboard;

namespace Clampwise.Benchmarks;

/// <summary>One fretboard from its setup to its lines, as at every key in the explorer: both frettings and their degrees.</summary>
[MemoryDiagnoser]
public class FretboardDrawingBenchmarks
{
    private static readonly Setup s_setup = Setup.Parse("standard + full@1 + 2-4@3").Value;
    private readonly FretboardPicture _picture = new(s_setup, Fretting.Parse("x05740", s_setup).Value)
    {
        Other = Fretting.Parse("x07500", s_setup).Value,
        Cursor = (StringNumber.Of(3), Fret.Of(5)),
    };

    /// <summary>A terminal of 80 columns.</summary>
    [Benchmark]
    public int Small() => Draw(78, 14);

    /// <summary>The largest that is used.</summary>
    [Benchmark]
    public int Large() => Draw(198, 40);

    private int Draw(int width, int height) =>
        FretboardDrawing.Draw(DotSigns.On(_picture, DotSign.Degrees, Hand.Medium), GlyphSet.Unicode, width, height, FretboardStyle.Usual).Count;
}
