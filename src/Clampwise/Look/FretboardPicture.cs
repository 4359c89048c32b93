using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Look;

/// <summary>What is to be drawn on a fretboard.</summary>
/// <param name="Setup">The tuning with its clamps.</param>
/// <param name="Fretting">What the hand does; null for the bare setup.</param>
internal sealed record FretboardPicture(Setup Setup, Fretting? Fretting)
{
    /// <summary>The fewest frets worth drawing.</summary>
    public const int FewestFrets = 7;

    /// <summary>Where the cursor is; fret 0 is the place before the nut where a string is left to ring or muted.</summary>
    public (StringNumber Number, Fret Fret)? Cursor { get; init; }

    /// <summary>Strings to point at.</summary>
    public StringSet Marked { get; init; }

    /// <summary>Words beside each string, lowest string first; empty for none.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>A sign for each finger, such as its number, lowest string first; empty for plain dots.</summary>
    public ImmutableArray<char> Dots { get; init; } = [];

    /// <summary>The highest fret that must be seen.</summary>
    public int LastFret
    {
        get
        {
            int finger = Fretting?.Stops.Max(stop => stop.Finger?.Number ?? 0) ?? 0;
            int clamp = Setup.Clamps.Select(c => c.Fret.Number).DefaultIfEmpty(0).Max();
            int needed = Math.Max(Math.Max(finger + 1, clamp + 4), Cursor?.Fret.Number ?? 0);
            return Math.Min(Math.Max(needed, FewestFrets), Fret.Last);
        }
    }

    /// <summary>The stop of a string; null on the bare setup.</summary>
    public StringStop? StopOf(StringNumber number) => Fretting?[number];

    /// <summary>True if the cursor is there.</summary>
    public bool IsCursor(StringNumber number, Fret fret) => Cursor is { } cursor && cursor.Number == number && cursor.Fret == fret;

    /// <summary>True if a clamp holds the string at that very fret.</summary>
    public bool IsClamped(StringNumber number, Fret fret) => Setup.Clamps.Any(clamp => clamp.Fret == fret && clamp.Strings.Contains(number));

    /// <summary>True if the length of string that ends at a fret sounds.</summary>
    public bool Sounds(StringNumber number, Fret fret) => StopOf(number) is not { IsMuted: true } && fret > SoundsFrom(number);

    /// <summary>Where the sounding length begins.</summary>
    public Fret SoundsFrom(StringNumber number) => StopOf(number)?.Finger ?? Setup.Ground(number);

    /// <summary>The sign of a finger on a string.</summary>
    public char DotOn(StringNumber number, char plain) => Dots.IsEmpty ? plain : Dots[number.IndexAmong(Setup.StringCount)];
}
