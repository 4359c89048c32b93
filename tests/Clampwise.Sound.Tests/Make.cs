using Clampwise.Fretboard;
using Clampwise.Sound.Performing;
using Clampwise.Theory;

namespace Clampwise.Sound.Tests;

/// <summary>Short ways to the values that tests need.</summary>
internal static class Make
{
    public static Performance Note(int stringNumber, int fret, Contact? contact = null, double seconds = 2.0, double strength = 0.7)
    {
        var number = StringNumber.Of(stringNumber);
        Pitch pitch = Tuning.Standard[number] + fret;
        var note = new PlayedNote(number, pitch, Fret.Of(fret), contact ?? (fret == 0 ? Contact.Nut : Contact.Finger), TimeSpan.Zero, TimeSpan.FromSeconds(seconds))
        {
            Strength = Strength.Of(strength).Value,
        };
        return Performance.Of([note], 6);
    }

    public static Voicing Voicing(string setup, string fretting) => Fretboard.Voicing.Parse(Setup.Parse(setup).Value, fretting).Value;

    public static Performance Strum(string fretting = "022100", string setup = "standard", double seconds = 2.0, double strength = 0.7) =>
        Perform.Strum(
            Voicing(setup, fretting),
            StrumDirection.Down,
            PlayingStyle.Standard with { Ring = TimeSpan.FromSeconds(seconds), Strength = Strength.Of(strength).Value });

    public static double Decibels(double ratio) => 20.0 * Math.Log10(ratio);
}
