using System.Globalization;
using Clampwise.Fretboard;
using Clampwise.Sound.Files;
using Clampwise.Sound.SoundFonts;
using Clampwise.Sound.Strings;

namespace Clampwise.Sound.Tests;

/// <summary>
/// Every string and fret as an outside pitch tracker reads it: aubiopitch with the method of de Cheveigne and Kawahara (YIN), from
/// Debian's aubio-tools. Where it is not installed this test is skipped, unless CLAMPWISE_OUTSIDE is 1.
/// </summary>
public class NeckByAubioTests
{
    private const string Font = "/usr/share/sounds/sf2/TimGM6mb.sf2";

    [OutsideTheory("aubiopitch", Font)]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_fret_of_every_string_is_read_within_a_cent(bool isSoundFont)
    {
        IInstrument instrument = isSoundFont ? SoundFontFile.Open(Font).Value is { } file ? file.Find("25").Then(file.Load).Value : null! : new PluckedGuitar();
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".wav");
        var faults = new List<string>();
        for (int number = 1; number <= 6; number++)
        {
            for (int fret = 0; fret <= Fret.Last; fret++)
            {
                Performance note = Make.Note(number, fret, seconds: 1.4);
                Written.To(path, stream => WaveFile.Write(stream, instrument, note, WaveDepth.Bits16));
                double cents = 100.0 * (Read(path) - note.Notes[0].Pitch.Midi);
                if (!(Math.Abs(cents) < 1.0))
                {
                    faults.Add($"string {number} fret {fret}: {cents:0.00} cents");
                }
            }
        }

        File.Delete(path);
        Assert.Empty(faults);
    }

    // The middle one of all readings between 0.2 and 1.2 seconds, as a MIDI note number with its fraction.
    private static double Read(string path)
    {
        string output = OutsideTools.Run("aubiopitch", "-i", path, "-p", "yin", "-B", "4096", "-H", "512", "-u", "midi");
        double[] readings = [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray())
            .Where(row => row[0] is > 0.2 and < 1.2 && row[1] > 0.0)
            .Select(row => row[1])
            .Order()];
        return readings.Length == 0 ? double.NaN : readings[readings.Length / 2];
    }
}
