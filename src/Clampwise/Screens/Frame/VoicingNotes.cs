using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>What is written beside each string of a voicing: its pitch, spelled by the first reading, and its degree.</summary>
internal static class VoicingNotes
{
    /// <summary>The notes, lowest string first; empty for a muted string.</summary>
    public static ImmutableArray<string> Of(Voicing voicing)
    {
        Reading? reading = voicing.Sounding.Readings.FirstOrDefault();
        return [.. voicing.Strings.Select(sounding => sounding.Pitch is { } pitch ? Note(voicing, pitch, reading) : "")];
    }

    private static string Note(Voicing voicing, Pitch pitch, Reading? reading)
    {
        SoundingTone? tone = reading?.Tones.Cast<SoundingTone?>().FirstOrDefault(candidate => candidate!.Value.Pitch == pitch);
        return tone is { } known ? $"{known.Spelled,-4} {known.Degree}" : $"{voicing.Setup.Spell(pitch)}";
    }
}
