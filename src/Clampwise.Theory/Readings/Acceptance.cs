namespace Clampwise.Theory;

/// <summary>The judgement on a chord symbol as an answer to what sounds.</summary>
/// <param name="Kind">How it stands to what sounds.</param>
/// <param name="IsOtherSpelling">True if root or bass are spelled otherwise than in the reading: Db for C#.</param>
/// <param name="Reading">The reading that it is; none if it is wrong or fits without being one.</param>
public sealed record Acceptance(AcceptanceKind Kind, bool IsOtherSpelling, Reading? Reading)
{
    /// <summary>True if it is a correct name.</summary>
    public bool IsAccepted => Kind >= AcceptanceKind.WithoutThird;

    internal static Acceptance Of(Sonority sonority, ChordSymbol symbol)
    {
        for (int index = 0; index < sonority.Readings.Length; index++)
        {
            Reading reading = sonority.Readings[index];
            ChordLikeness likeness = symbol.LikenessTo(reading.Symbol);
            if (likeness != ChordLikeness.OtherChord)
            {
                AcceptanceKind kind = index == 0 ? AcceptanceKind.FirstReading : AcceptanceKind.AnotherReading;
                return new Acceptance(kind, likeness == ChordLikeness.OtherSpelling, reading);
            }
        }

        bool isOtherSpelling = symbol.LikenessTo(sonority.First.Key is { } key ? symbol.In(key) : symbol.Respelled) == ChordLikeness.OtherSpelling;
        var matcher = new ChordMatcher(symbol);
        AcceptanceKind judged = matcher.Fits(sonority.Pitches.AsSpan()) ? AcceptanceKind.Fitting
            : matcher.FitsWithoutThird(sonority.Pitches.AsSpan()) ? AcceptanceKind.WithoutThird
            : HasOtherBass(sonority, symbol) ? AcceptanceKind.OtherBass
            : AcceptanceKind.Wrong;
        return new Acceptance(judged, isOtherSpelling, null);
    }

    // A triad over a foreign bass is the chord in question only if that is how the whole is read: Am7 is not C, though it can be read C/A.
    private static bool HasOtherBass(Sonority sonority, ChordSymbol symbol) =>
        sonority.Readings.Where((reading, index) => index == 0 || !reading.IsBassForeign).Select(reading => reading.Symbol)
            .Any(other => other.Root.Class == symbol.Root.Class && other.Quality.HasTonesOf(symbol.Quality));
}
