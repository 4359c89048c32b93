using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A voicing said in words, one line a string, so that no drawing is needed.</summary>
public static class VoicingWords
{
    private static readonly string[] s_numbers =
    [
        "root", "second", "third", "fourth", "fifth", "sixth", "seventh", "octave", "ninth", "tenth", "eleventh", "twelfth", "thirteenth",
    ];

    /// <summary>
    /// Every string from the lowest to the highest, such as <c>string 5 held by the clamp at fret 2, rings, B2, the fifth</c> or
    /// <c>string 4 free, finger 2 at fret 4, F#3, the ninth</c>.
    /// </summary>
    /// <param name="voicing">The voicing.</param>
    /// <param name="fingering">The fingers to name; none if null.</param>
    public static IEnumerable<string> Lines(Voicing voicing, Fingering? fingering = null)
    {
        ImmutableArray<SoundingTone>? tones = voicing.Sounding.Readings.FirstOrDefault()?.Tones;
        ImmutableArray<string> names = voicing.PitchNames;
        int next = 0;
        foreach (SoundingString sounding in voicing.Strings)
        {
            if (sounding.Pitch is null)
            {
                yield return $"string {sounding.Number} muted";
                continue;
            }

            string held = sounding.IsHeld ? $"held by the clamp at fret {sounding.Ground}" : "free";
            string note = tones is { } read ? $"{names[next]}, {Say(read[next].Degree)}" : names[next];
            next++;
            yield return $"string {sounding.Number} {held}, {Stop(voicing.Setup, sounding, fingering)}, {note}";
        }
    }

    /// <summary>A degree as it is said: <c>the root</c>, <c>the minor third</c>, <c>the flat seventh</c>, <c>the ninth</c>.</summary>
    public static string Say(ChordDegree degree)
    {
        string altered = (degree.Number, degree.Alteration) switch
        {
            (3, -1) => "minor ",
            (7, 0) => "major ",
            (7, -2) => "diminished ",
            (_, -1) => "flat ",
            (_, 1) => "sharp ",
            (_, -2) => "double flat ",
            _ => "",
        };
        return $"the {altered}{s_numbers[degree.Number - 1]}";
    }

    private static string Stop(Setup setup, SoundingString sounding, Fingering? fingering)
    {
        if (sounding.Stop.Finger is not { } finger)
        {
            return "rings";
        }

        string place = setup.ClampBeyond(sounding.Number, finger) is { } beyond ? $" behind the clamp at fret {beyond.Fret}"
            : setup.ClampBeside(sounding.Number, finger) is not null ? " beside the clamp"
            : "";
        string name = fingering?.FingerOn(sounding.Number).InWords() ?? "finger";
        return $"{name} at fret {finger}{place}";
    }
}
