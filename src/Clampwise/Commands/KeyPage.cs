using Clampwise.Fretboard;

namespace Clampwise.Commands;

/// <summary><c>find SETUP --key D</c>: what is worth having in a setup, hands for every degree of a key.</summary>
internal static class KeyPage
{
    public static int Print(Surroundings around, Setup setup, KeyHands found, bool asJson)
    {
        if (asJson)
        {
            foreach (DegreeHands degree in found.Degrees)
            {
                JsonLines.Print(around.Out, DegreeRow.Of(setup, found, degree));
            }

            return ExitCode.Good;
        }

        return around.PrintLines(Lines(setup, found));
    }

    private static IEnumerable<string> Lines(Setup setup, KeyHands found)
    {
        yield return $"{found.Key} counted from home in {setup}, sounds {found.SoundingKey}";
        int shape = found.Degrees.Max(degree => $"{degree.Shape}".Length);
        int sounds = found.Degrees.Max(degree => $"{degree.Sounding}".Length);
        int fretting = found.Degrees.SelectMany(degree => degree.Hands).Select(hand => $"{hand.Whole.Voicing.Fretting}".Length).DefaultIfEmpty().Max();
        foreach (DegreeHands degree in found.Degrees)
        {
            string names = $"{degree.Degree.Roman,-4}  {$"{degree.Shape}".PadRight(shape)}  sounds {$"{degree.Sounding}".PadRight(sounds)}  ";
            foreach ((FoundHand hand, int index) in degree.Hands.Select((hand, index) => (hand, index)))
            {
                yield return (index == 0 ? names : new string(' ', names.Length)) + Said(hand.Whole, fretting);
            }

            if (degree.NearMissWords is { Length: > 0 } near)
            {
                yield return (degree.Hands.IsEmpty ? names : new string(' ', 6)) + near;
            }
            else if (degree.Hands.IsEmpty)
            {
                yield return names + "no hand here";
            }
        }
    }

    private static string Said(FoundVoicing found, int width) =>
        $"{$"{found.Voicing.Fretting}".PadRight(width)}  {Fingers(found.Fingering)}  {Ringing(found.Voicing)}";

    private static string Fingers(Fingering fingering) =>
        string.Concat(fingering.ByString.Select(finger => finger == Finger.None ? "." : finger.Mark()));

    private static string Ringing(Voicing voicing)
    {
        var ringing = StringSet.Of(voicing.Strings.Where(sounding => sounding.Stop.IsRinging).Select(sounding => sounding.Number));
        return ringing.Count == 0 ? "none rings" : $"{ringing} {(ringing.Count == 1 ? "rings" : "ring")}";
    }
}

/// <summary>A degree of a key as printed by <c>find --key --json</c>; no near miss where the chord itself comes easy.</summary>
internal sealed record DegreeRow(string Setup, string Key, string SoundingKey, string Degree, string ShapeName, string SoundingName, FoundRow[] Hands, FoundRow? NearMiss, string NearMissWords)
{
    public static DegreeRow Of(Setup setup, KeyHands found, DegreeHands degree) => new(
        setup.ToString(),
        found.Key.ToString(),
        found.SoundingKey.ToString(),
        degree.Degree.Roman,
        degree.Shape.ToString(),
        degree.Sounding.ToString(),
        [.. degree.Hands.Select(FoundRow.Of)],
        degree.NearMiss is { } near ? FoundRow.Of(near) : null,
        degree.NearMissWords);
}
