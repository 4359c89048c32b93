using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What a chord name is worth as an answer: every correct name is right; one without its bass is right in part.</summary>
internal static class NameVerdicts
{
    public static bool IsRight(Acceptance acceptance) => acceptance.IsAccepted || acceptance.Kind == AcceptanceKind.OtherBass;

    /// <summary>The same for a name given: a bass that neither sounds nor belongs to the chord named is forgiven nobody.</summary>
    public static bool IsRight(Acceptance acceptance, ChordSymbol given, Sonority asked) => acceptance.IsAccepted
        || (acceptance.Kind == AcceptanceKind.OtherBass
            && (given.Tones.Any(tone => tone.Note.Class == given.BassClass) || asked.Pitches.Any(pitch => pitch.Class == given.BassClass)));

    public static Verdict Right(ChordSymbol symbol, Acceptance acceptance, Sonority asked, Voicing right) =>
        new(true, symbol.ToString(), asked.Name, right)
        {
            IsPartly = acceptance.Kind == AcceptanceKind.OtherBass,
            Remark = QuestionWords.AcceptedAs(acceptance, asked),
        };
}
