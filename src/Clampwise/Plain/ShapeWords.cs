using Clampwise.Fretboard;

namespace Clampwise.Plain;

/// <summary>What the hand does, in words: without pitches and degrees, which would give a name away.</summary>
internal static class ShapeWords
{
    /// <summary>One line a string, lowest first.</summary>
    public static IEnumerable<string> Lines(Voicing voicing) => voicing.Strings.Select(sounding =>
    {
        string held = sounding.IsHeld ? $"held by the clamp at fret {sounding.Ground}" : "free";
        return sounding.Stop switch
        {
            { IsMuted: true } => $"string {sounding.Number} muted",
            { IsRinging: true } => $"string {sounding.Number} {held}, rings",
            var stop => $"string {sounding.Number} {held}, finger at fret {stop.Finger}{Place(voicing.Setup, sounding)}",
        };
    });

    /// <summary>The whole shape in one line: <c>string 4 fret 6, string 3 fret 4, the rest ring</c>.</summary>
    public static string InShort(Voicing voicing)
    {
        List<string> words =
        [
            .. voicing.Strings.Where(sounding => !sounding.Stop.IsRinging)
                .Select(sounding => sounding.Stop.IsMuted ? $"string {sounding.Number} muted" : $"string {sounding.Number} fret {sounding.Stop.Finger}"),
        ];
        int ringing = voicing.Strings.Count(sounding => sounding.Stop.IsRinging);
        words.Add(ringing == voicing.Strings.Length ? "every string rings" : ringing == 0 ? "no string rings" : ringing == 1 ? "the other one rings" : "the rest ring");
        return string.Join(", ", words);
    }

    private static string Place(Setup setup, SoundingString sounding) =>
        setup.ClampBeyond(sounding.Number, sounding.Stop.Finger!.Value) is { } beyond ? $" behind the clamp at fret {beyond.Fret}"
        : setup.ClampBeside(sounding.Number, sounding.Stop.Finger!.Value) is not null ? " beside the clamp"
        : "";
}
