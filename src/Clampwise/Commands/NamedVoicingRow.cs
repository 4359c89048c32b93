using Clampwise.Fretboard;

namespace Clampwise.Commands;

/// <summary>What sounds on a string.</summary>
internal enum StringState
{
    /// <summary>Nothing.</summary>
    Muted,

    /// <summary>The string from its ground, with no finger.</summary>
    Ringing,

    /// <summary>The string under a finger.</summary>
    Fretted,
}

/// <summary>A voicing with its names, as printed by <c>name --json</c>. Strings go from the lowest to the highest.</summary>
internal sealed record NamedVoicingRow(
    string Setup,
    string Fretting,
    string FromHome,
    string ShapeName,
    string SoundingName,
    string[] Readings,
    string[] ShapeReadings,
    StringRow[] Strings)
{
    public static NamedVoicingRow Of(Voicing voicing) => new(
        voicing.Setup.ToString(),
        voicing.Fretting.ToString(),
        voicing.Fretting.ToHomeText(voicing.Setup),
        voicing.ShapeName,
        voicing.SoundingName,
        [.. voicing.Sounding.Readings.Select(reading => reading.Symbol.ToString())],
        [.. voicing.Shape.Readings.Select(reading => reading.Symbol.ToString())],
        [.. voicing.Strings.Zip(voicing.StringNotes, StringRow.Of)]);
}

/// <summary>One string of a voicing: its ground and finger in frets from the nut, its pitch and MIDI note number if it sounds.</summary>
internal sealed record StringRow(int String, StringState State, int Ground, int? Fret, string? Pitch, int? Midi)
{
    public static StringRow Of(SoundingString sounding, string? note) => new(
        sounding.Number.Number,
        sounding.Stop.IsMuted ? StringState.Muted : sounding.Stop.IsRinging ? StringState.Ringing : StringState.Fretted,
        sounding.Ground.Number,
        sounding.Stop.Finger?.Number,
        note,
        sounding.Pitch?.Midi);
}

/// <summary>A line of standard input that could not be read.</summary>
internal sealed record BadLineRow(int Line, string Input, string Error);
