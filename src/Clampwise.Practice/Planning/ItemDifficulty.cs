using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>
/// How hard an item is guessed to be before it was ever answered, on the logistic scale of <see cref="Skill"/>: from the fingers,
/// the strings skipped, the tones, the family, and the neighbours in its drill that differ by one string. The amounts are our judgement; a teacher's
/// rubric weighs uncommon shapes most (Velez Vasquez et al. 2023).
/// </summary>
public static class ItemDifficulty
{
    private const double Base = -1.2;

    /// <summary>The difficulty: about -2 (nearly everyone gets it right) to 2.</summary>
    public static double Of(PracticeItem item)
    {
        int fingers = item.Subject.Voicing.Fretting.Stops.Count(stop => stop.IsFretted);
        int tones = item.Subject.Voicing.Pitches.Select(pitch => pitch.Class).Distinct().Count();
        int skipped = SkippedStrings(item.Subject.Voicing);
        int neighbours = Math.Min(4, item.Drill.Voicings.Count(other => other.Key != item.Key.Shape
            && other.Voicing.SoundsOtherwise(item.Subject.Voicing).Count == 1));
        return Base + item.Key.Direction.Facts().Hardness + (0.2 * Math.Max(0, fingers - 2)) + (0.25 * Math.Max(0, tones - 3))
            + (IsPlain(item.Family) ? 0 : 0.4) + (0.15 * neighbours) + (0.2 * skipped);
    }

    // Muted strings between sounding ones.
    private static int SkippedStrings(Voicing voicing)
    {
        bool[] sounds = [.. voicing.Strings.Select(sounding => sounding.Pitch is not null)];
        int first = Array.IndexOf(sounds, true);
        int last = Array.LastIndexOf(sounds, true);
        return first < 0 ? 0 : sounds[first..last].Count(isSounding => !isSounding);
    }

    private static bool IsPlain(ChordFamily family) => family is ChordFamily.Major or ChordFamily.Minor or ChordFamily.Power;
}
