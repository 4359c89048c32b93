using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A voicing said in words, one line a string, so that no drawing is needed.</summary>
public static class VoicingWords
{
    private static readonly string[] s_degrees =
    [
        "the root", "the flat second", "the second", "the minor third", "the major third", "the fourth",
        "the flat fifth", "the fifth", "the sharp fifth", "the sixth", "the flat seventh", "the major seventh",
    ];

    /// <summary>
    /// Every string from the lowest to the highest, such as <c>string 5 held by the clamp at fret 2, rings, B2, the fifth</c> or
    /// <c>string 4 free, finger 2 at fret 4, F#3, the ninth</c>.
    /// </summary>
    public static IEnumerable<string> Lines(Voicing voicing) => voicing.Strings.Select(sounding => Line(voicing, sounding));

    private static string Line(Voicing voicing, SoundingString sounding)
    {
        if (sounding.Pitch is not { } pitch)
        {
            return $"string {sounding.Number} muted";
        }

        string held = sounding.IsHeld ? $"held by the clamp at fret {sounding.Ground}" : "free";
        return $"string {sounding.Number} {held}, {Stop(voicing.Setup, sounding)}, {pitch}{Degree(voicing, pitch)}";
    }

    private static string Stop(Setup setup, SoundingString sounding)
    {
        if (sounding.Stop.Finger is not { } finger)
        {
            return "rings";
        }

        string place = setup.ClampBeyond(sounding.Number, finger) is { } beyond ? $" behind the clamp at fret {beyond.Fret}"
            : setup.ClampBeside(sounding.Number, finger) is not null ? " beside the clamp"
            : "";
        return $"finger at fret {finger}{place}";
    }

    private static string Degree(Voicing voicing, Pitch pitch) => voicing.Sounding.Readings.IsEmpty
        ? ""
        : $", {s_degrees[PitchClass.SemitonesUp(voicing.Sounding.Readings[0].Symbol.Root.Class, pitch.Class)]}";
}
