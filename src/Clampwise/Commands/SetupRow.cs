using Clampwise.Fretboard;

namespace Clampwise.Commands;

/// <summary>A setup as printed by <c>setup --json</c>. Strings and pitches go from the lowest string to the highest.</summary>
internal sealed record SetupRow(
    string Setup,
    int HomeFret,
    string[] OpenStrings,
    int[] Midi,
    string SoundingName,
    string ShapeName,
    string Key,
    string SoundingKey,
    string Resemblance,
    TuningMatchRow[] SameIntervals,
    GroundRow[] Strings,
    ClampRow[] Clamps,
    string? Turned)
{
    public static SetupRow Of(SetupDescription description)
    {
        Setup setup = description.Setup;
        return new SetupRow(
            setup.ToString(),
            setup.HomeFret.Number,
            [.. setup.GroundNames],
            [.. setup.GroundPitches.Select(pitch => pitch.Midi)],
            description.OpenStrings.SoundingName,
            description.OpenStrings.ShapeName,
            setup.Key.ToString(),
            setup.SoundingKey.ToString(),
            description.Resemblance,
            [.. description.Matches.Select(match => new TuningMatchRow(match.Named.Name, match.SemitonesUp))],
            [.. setup.Strings.Select(number => GroundRow.Of(setup, number))],
            [.. setup.Clamps.Select(clamp => new ClampRow(clamp.ToString(), clamp.Fret.Number, [.. clamp.Strings.Strings.Select(s => s.Number)], clamp.IsFull, clamp == setup.Home, setup.IdleClamps.Contains(clamp)))],
            description.Turned?.ToString());
    }
}

/// <summary>A named tuning with the same intervals, and how far the open strings lie above it.</summary>
internal sealed record TuningMatchRow(string Tuning, int SemitonesUp);

/// <summary>One string of a setup: its pitch from the nut, its ground, and what it rings.</summary>
internal sealed record GroundRow(int String, string Tuning, int Ground, bool Held, string Pitch, int Midi)
{
    public static GroundRow Of(Setup setup, StringNumber number) => new(
        number.Number,
        setup.Spell(setup.Tuning[number]).ToString(),
        setup.Ground(number).Number,
        setup.IsHeld(number),
        setup.GroundNames[number.IndexAmong(setup.StringCount)],
        setup.GroundPitch(number).Midi);
}

/// <summary>One clamp of a setup.</summary>
internal sealed record ClampRow(string Clamp, int Fret, int[] Strings, bool Full, bool Home, bool Idle);

/// <summary>Two setups side by side as printed by <c>setup --beside --json</c>; chords only where they were asked for.</summary>
internal sealed record BesideRow(string Setup, string Other, int? SemitonesUp, OpenStringRow[] Strings, ChordYieldRow[]? Chords, string? Better)
{
    public static BesideRow Of(SetupComparison comparison, ChordYield? yield) => new(
        comparison.First.Setup.ToString(),
        comparison.Second.Setup.ToString(),
        comparison.Transposition,
        [.. comparison.Strings.Select(change => new OpenStringRow(change.Number.Number, change.From.ToString(), change.To.ToString(), change.WasHeld, change.IsHeld))],
        yield is null ? null : [.. yield.Chords.Select(chord => new ChordYieldRow(chord.Chord.ToString(), chord.First, chord.Second))],
        yield?.Better?.ToString());
}

/// <summary>One open string in both setups.</summary>
internal sealed record OpenStringRow(int String, string Pitch, string OtherPitch, bool Held, bool OtherHeld);

/// <summary>How many easy voicings of a chord each of two setups gives.</summary>
internal sealed record ChordYieldRow(string Chord, int Easy, int OtherEasy);

/// <summary>A setup with all clamps moved as printed by <c>setup --move --json</c>.</summary>
internal sealed record MovedRow(string Setup, int Frets, string To, bool Exact, string[] OpenStrings, string[] Words);
