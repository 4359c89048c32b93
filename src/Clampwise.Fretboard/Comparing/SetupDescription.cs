using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>What a setup gives before any finger is down: its open strings, what they spell, and which tuning they resemble.</summary>
public sealed class SetupDescription
{
    private SetupDescription(Setup setup)
    {
        Setup = setup;
        OpenStrings = Voicing.OpenStrings(setup);
        Matches = NamedTunings.WithSameIntervals(setup.GroundPitches);
    }

    /// <summary>The setup described.</summary>
    public Setup Setup { get; }

    /// <summary>All strings left to ring.</summary>
    public Voicing OpenStrings { get; }

    /// <summary>The named tunings with the same intervals as the open strings, the nearest first; empty if there is none.</summary>
    public ImmutableArray<TuningMatch> Matches { get; }

    /// <summary>The same clamps turned round; null if that is the same setup.</summary>
    public Setup? Turned => Setup.Turned().Value is { } turned && !turned.Equals(Setup) ? turned : null;

    /// <summary>The description of a setup.</summary>
    public static SetupDescription Of(Setup setup) => new(setup);

    /// <summary>What the open strings spell: <c>A/E, counted from the clamp at 2 G/D</c>.</summary>
    public string Spelling => Setup.ShapeShift == 0
        ? OpenStrings.SoundingName
        : $"{OpenStrings.SoundingName}, {(Setup.Home is { } home ? $"counted from the clamp at {home.Fret}" : "as a shape")} {OpenStrings.ShapeName}";

    /// <summary>The nearest named tuning in words, or that there is none.</summary>
    public string Resemblance => Matches.Length > 0 ? Matches[0].ToString() : "no named tuning has these intervals";

    /// <summary>The whole description, one line a fact.</summary>
    public IEnumerable<string> Lines
    {
        get
        {
            yield return $"open strings {string.Join(' ', Setup.GroundNames)}: {Spelling}";
            yield return Resemblance;
            yield return Setup.ShapeShift == 0 ? $"key of {Setup.Key}" : $"key of {Setup.Key} counted from home, sounds {Setup.SoundingKey}";
            yield return $"{Spoken.Strings(Setup.HeldStrings)} held, {Spoken.Strings(Setup.FreeStrings)} free";
            foreach (Clamp clamp in Setup.IdleClamps)
            {
                yield return $"clamp {clamp} is idle: higher clamps hold every string of it";
            }

            if (Turned is { } turned)
            {
                SetupDescription other = Of(turned);
                string pitches = string.Join(' ', turned.GroundNames);
                yield return $"turned round: {turned}, open strings {pitches}: {other.OpenStrings.SoundingName}, {other.Resemblance}";
            }
        }
    }
}
