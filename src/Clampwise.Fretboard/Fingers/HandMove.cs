using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>
/// The move from one hand to another in the same setup, finger by finger, and what it costs. That fingers kept on their strings and
/// fingers that slide along them make a change easy, and shifts of position make it hard, is common practice, and follows Heijink and
/// Meulenbroek 2002 on repositioning; the amounts are our judgement.
/// </summary>
/// <param name="Kept">Fingers that stay where they are.</param>
/// <param name="Slid">Fingers that go along their strings to another fret without leaving them: the first is the guide finger.</param>
/// <param name="Replaced">Fingers that leave their strings and come down elsewhere.</param>
/// <param name="Lifted">Fingers that leave and are not used again.</param>
/// <param name="Placed">Fingers that were free and come down.</param>
/// <param name="Shift">Frets by which the position of finger 1 moves, down the neck if negative; 0 if a hand has no finger down.</param>
public sealed record HandMove(
    ImmutableArray<Finger> Kept,
    ImmutableArray<Finger> Slid,
    ImmutableArray<Finger> Replaced,
    ImmutableArray<Finger> Lifted,
    ImmutableArray<Finger> Placed,
    int Shift)
{
    private const double SlidPoints = 0.6;
    private const double ReplacedPoints = 1.2;
    private const double LiftedPoints = 0.2;
    private const double PlacedPoints = 1.0;
    private const double ShiftedFretPoints = 0.4;
    private const double GuidedPart = 0.5;

    /// <summary>The finger that leads the hand along a string to its new position; none if no finger slides.</summary>
    public Finger Guide => Slid.IsEmpty ? Finger.None : Slid[0];

    /// <summary>
    /// The cost in points, 0 and up; one point is a free finger that comes down. A shift costs half where a finger stays on its string
    /// and guides it.
    /// </summary>
    public double Points =>
        (Slid.Length * SlidPoints) + (Replaced.Length * ReplacedPoints) + (Lifted.Length * LiftedPoints) + (Placed.Length * PlacedPoints)
        + (Math.Abs(Shift) * ShiftedFretPoints * (Guide == Finger.None ? 1.0 : GuidedPart));

    /// <summary>The move between two hands. Throws if they are not in one setup.</summary>
    public static HandMove Between(Fingering from, Fingering to)
    {
        if (!from.Voicing.Setup.Equals(to.Voicing.Setup))
        {
            throw new ArgumentException("A hand moves within one setup: set the clamps first.", nameof(to));
        }

        var before = from.Placements.ToDictionary(placement => placement.Finger);
        var after = to.Placements.ToDictionary(placement => placement.Finger);
        Finger[] both = [.. from.Placements.Select(placement => placement.Finger).Where(after.ContainsKey)];
        bool Stays(Finger finger) => before[finger].Fret == after[finger].Fret && SharesString(before[finger], after[finger]);
        bool Slides(Finger finger) => before[finger].Fret != after[finger].Fret && before[finger].Strings == after[finger].Strings;
        return new HandMove(
            [.. both.Where(Stays)],
            [.. both.Where(Slides)],
            [.. both.Where(finger => !Stays(finger) && !Slides(finger))],
            [.. before.Keys.Where(finger => !after.ContainsKey(finger)).Order()],
            [.. after.Keys.Where(finger => !before.ContainsKey(finger)).Order()],
            Position(to) - Position(from) is { } shift ? shift : 0);
    }

    /// <summary>In words: <c>finger 2 stays, finger 3 slides, finger 1 lifts, position two frets up</c>.</summary>
    public override string ToString()
    {
        string[] parts =
        [
            .. Said(Kept, "stays", "stay"), .. Said(Slid, "slides", "slide"), .. Said(Replaced, "moves over", "move over"),
            .. Said(Lifted, "lifts", "lift"), .. Said(Placed, "comes down", "come down"),
            .. Shift == 0 ? Array.Empty<string>() : [$"position {Spoken.Count(Math.Abs(Shift), "fret")} {(Shift < 0 ? "down" : "up")}"],
        ];
        return parts.Length == 0 ? "nothing moves" : string.Join(", ", parts);
    }

    private static IEnumerable<string> Said(ImmutableArray<Finger> fingers, string one, string several)
    {
        if (!fingers.IsEmpty)
        {
            yield return $"{Spoken.List([.. fingers.Select(finger => finger.InWords())])} {(fingers.Length == 1 ? one : several)}";
        }
    }

    // A barre that grows or shrinks at its fret keeps its place.
    private static bool SharesString(FingerPlacement one, FingerPlacement other) => one.Strings.Intersect(other.Strings).Count > 0;

    // Where finger 1 lies or would lie, one finger a fret; the thumb says nothing of it.
    private static int? Position(Fingering fingering)
    {
        FingerPlacement? lowest = fingering.Placements.Where(placement => placement.Finger != Finger.Thumb).MinBy(placement => placement.Finger);
        return lowest is null ? null : lowest.Fret.Number - ((int)lowest.Finger - (int)Finger.Index);
    }
}
