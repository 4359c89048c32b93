using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>What is to be drawn on a fretboard.</summary>
/// <param name="Setup">The tuning with its clamps.</param>
/// <param name="Fretting">What the hand does; null for the bare setup.</param>
public sealed record FretboardPicture(Setup Setup, Fretting? Fretting)
{
    /// <summary>The fewest frets that are drawn where there is room.</summary>
    public const int FewestFrets = 7;

    private const int FretsBeyondClamp = 4;

    /// <summary>Where the cursor is; fret 0 is the place before the nut where a string is left to ring or muted.</summary>
    public (StringNumber Number, Fret Fret)? Cursor { get; init; }

    /// <summary>A second fretting in the same setup, drawn with other glyphs, to show how the two differ; null for none.</summary>
    public Fretting? Other { get; init; }

    /// <summary>Strings to point at.</summary>
    public StringSet Marked { get; init; }

    /// <summary>What stands over the words beside the strings: they are at concert pitch, whatever a name counts from.</summary>
    public const string NotesHead = "sounds";

    /// <summary>What each string sounds, in words beside it, lowest string first; empty for none.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What stands on the dots.</summary>
    public StringSigns Signs { get; init; } = StringSigns.None;

    /// <summary>How many frets the player wants to see; null for as many as suit the room.</summary>
    public int? Frets { get; init; }

    /// <summary>True if there are two frettings to compare.</summary>
    public bool IsComparing => Fretting is not null && Other is not null;

    /// <summary>True if a second fretting may come: room is kept for it, so that the board stays where it is.</summary>
    public bool MayCompare { get; init; }

    /// <summary>True if there is room before the nut for the states of two frettings.</summary>
    public bool HasRoomForTwo => IsComparing || MayCompare;

    /// <summary>How strings that are pointed at look.</summary>
    public Mark PointedMark => IsComparing ? Mark.Other : Mark.Pointed;

    /// <summary>The lowest and the highest fret that have something on them; both 1 if none has.</summary>
    public (int Low, int High) Busy
    {
        get
        {
            int[] frets = [.. Fingers(Fretting), .. Fingers(Other), .. Setup.Clamps.Select(clamp => clamp.Fret.Number), .. CursorFret];
            return frets.Length == 0 ? (1, 1) : (frets.Min(), frets.Max());
        }
    }

    /// <summary>The highest fret that a whole view shows: past the highest finger, and enough to play in above every clamp.</summary>
    public int LastFret
    {
        get
        {
            int finger = Fingers(Fretting).Concat(Fingers(Other)).DefaultIfEmpty(0).Max();
            int clamp = Setup.Clamps.Select(c => c.Fret.Number).DefaultIfEmpty(0).Max();
            int needed = Math.Max(Math.Max(finger + 1, clamp + FretsBeyondClamp), CursorFret.DefaultIfEmpty(0).Max());
            return Math.Min(Math.Max(needed, FewestFrets), Fret.Last);
        }
    }

    /// <summary>The stop of a string; null on the bare setup.</summary>
    public StringStop? StopOf(StringNumber number) => Fretting?[number];

    /// <summary>The stop of a string in the other fretting; null without one.</summary>
    public StringStop? OtherStopOf(StringNumber number) => IsComparing ? Other?[number] : null;

    /// <summary>True if the cursor is there.</summary>
    public bool IsCursor(StringNumber number, Fret fret) => Cursor is { } cursor && cursor.Number == number && cursor.Fret == fret;

    /// <summary>True if a finger is there.</summary>
    public bool IsFinger(StringNumber number, Fret fret) => StopOf(number)?.Finger == fret;

    /// <summary>True if a finger of the other fretting is there and none of the first.</summary>
    public bool IsOtherFinger(StringNumber number, Fret fret) => OtherStopOf(number)?.Finger == fret && !IsFinger(number, fret);

    /// <summary>True if a clamp holds the string at that very fret.</summary>
    public bool IsClamped(StringNumber number, Fret fret) => Setup.Clamps.Any(clamp => clamp.Fret == fret && clamp.Strings.Contains(number));

    /// <summary>True if one clamp lies over both strings at that very fret.</summary>
    public bool IsClampedAcross(StringNumber number, StringNumber next, Fret fret) =>
        Setup.Clamps.Any(clamp => clamp.Fret == fret && clamp.Strings.Contains(number) && clamp.Strings.Contains(next));

    /// <summary>True if the length of string that ends at a fret sounds.</summary>
    public bool Sounds(StringNumber number, Fret fret) => StopOf(number) is not { IsMuted: true } && fret > SoundsFrom(number);

    /// <summary>True if the wire of a fret lies under a sounding length or ends one.</summary>
    public bool SoundsAtWire(StringNumber number, Fret fret) => StopOf(number) is not { IsMuted: true } && fret >= SoundsFrom(number);

    /// <summary>Where the sounding length begins.</summary>
    public Fret SoundsFrom(StringNumber number) => StopOf(number)?.Finger ?? Setup.Ground(number);

    /// <summary>The sign of a string; empty where it has none.</summary>
    public string SignOf(StringNumber number) => Signs.Texts.IsEmpty ? "" : Signs.Texts[number.IndexAmong(Setup.StringCount)];

    private IEnumerable<int> CursorFret => Cursor is { Fret: var fret } && fret > Fret.Nut ? [fret.Number] : [];

    private static IEnumerable<int> Fingers(Fretting? fretting) => fretting?.Stops.Where(stop => stop.IsFretted).Select(stop => stop.Finger!.Value.Number) ?? [];
}
