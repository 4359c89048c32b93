namespace Clampwise.Theory;

/// <summary>The judgement on a chord symbol as an answer to what sounds.</summary>
/// <param name="Kind">How it stands to what sounds.</param>
/// <param name="IsOtherSpelling">True if root or bass are spelled otherwise than in the reading: Db for C#.</param>
/// <param name="Reading">The reading that it is; none if it is wrong or fits without being one.</param>
public sealed record Acceptance(AcceptanceKind Kind, bool IsOtherSpelling, Reading? Reading)
{
    /// <summary>True if it is a correct name.</summary>
    public bool IsAccepted => Kind >= AcceptanceKind.Fitting;

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

        bool isOtherSpelling = symbol.LikenessTo(symbol.Respelled) == ChordLikeness.OtherSpelling;
        return IsFitting(sonority, symbol)
            ? new Acceptance(AcceptanceKind.Fitting, isOtherSpelling, null)
            : new Acceptance(HasOtherBass(sonority, symbol) ? AcceptanceKind.OtherBass : AcceptanceKind.Wrong, isOtherSpelling, null);
    }

    private static bool IsFitting(Sonority sonority, ChordSymbol symbol)
    {
        var heard = HeardTones.Of(sonority.Pitches.AsSpan());
        if (heard.FromBass.Count < 2 || symbol.BassClass != heard.Bass)
        {
            return false;
        }

        ToneSet tones = heard.FromBass.From(PitchClass.SemitonesUp(heard.Bass, symbol.Root.Class));
        int bass = PitchClass.SemitonesUp(symbol.Root.Class, heard.Bass);
        var fit = ChordFit.Of(symbol.Quality);
        return fit.Fits(tones) || (!fit.All.Has(bass) && fit.Fits(tones.Without(bass)));
    }

    private static bool HasOtherBass(Sonority sonority, ChordSymbol symbol) =>
        sonority.Readings.Any(reading => reading.Symbol.Root.Class == symbol.Root.Class && reading.Symbol.Quality == symbol.Quality);
}
