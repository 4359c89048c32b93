using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>Which frettings are looked at: up to a fret, and within a span of frets.</summary>
public sealed record FrettingSpace
{
    /// <summary>The widest span: beyond it no hand reaches, and the tables would grow for nothing.</summary>
    public const int WidestSpan = 8;

    private FrettingSpace(Fret maxFret, int span) => (MaxFret, Span) = (maxFret, span);

    /// <summary>Frets up to 14, where a neck usually meets the body, within four frets (common practice, no source).</summary>
    public static FrettingSpace Usual { get; } = new(Fret.Of(14), 4);

    /// <summary>The usual space for so many strings: with eight it ends at the octave, so that an index of it stays under 60 MB.</summary>
    public static FrettingSpace UsualFor(int stringCount) =>
        stringCount < StringNumber.Most ? Usual : new FrettingSpace(Fret.Of(12), Usual.Span);

    /// <summary>The highest fret for a finger.</summary>
    public Fret MaxFret { get; }

    /// <summary>The highest fretted fret less the lowest is smaller than this: one finger a fret gives 4.</summary>
    public int Span { get; }

    /// <summary>A space; refused for frets beyond the neck or a span outside 1 to 8.</summary>
    public static Result<FrettingSpace> Create(int maxFret, int span) =>
        maxFret is < 1 or > Fret.Last ? FretboardWords.MaxFretOutOfRange(maxFret)
        : span is < 1 or > WidestSpan ? FretboardWords.SpanOutOfRange(span)
        : new FrettingSpace(Fret.Of(maxFret), span);
}
