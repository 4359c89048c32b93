using System.Text.Json;
using Xunit.Abstractions;

namespace Clampwise.Fretboard.Tests;

/// <summary>
/// Against tests/data/chords.json (an open data set of guitar chord positions, MIT): what people play, a hand must be able to
/// finger. Its own fingers are a hint, not a check: some do not match their frets.
/// </summary>
public class ChordPositionTests(ITestOutputHelper output)
{
    private static readonly (Voicing Voicing, int[] Fingers)[] s_positions = [.. Read()];

    [Fact]
    public void A_medium_hand_can_finger_every_position()
    {
        string[] refusals = [.. s_positions
            .Select(position => Fingering.Of(position.Voicing))
            .Where(result => !result.IsGood)
            .Select(result => result.Fault.Message)];
        int small = s_positions.Count(position => Fingering.Of(position.Voicing, Hand.Small).IsGood);
        int medium = s_positions.Length - refusals.Length;
        output.WriteLine($"of {s_positions.Length} positions a medium hand fingers {medium}, a small one {small}");
        Assert.Empty(refusals);
    }

    // Worked out from the whole data set at 648 mm: 90 % reach at most 77 mm, 99 % at most 97 mm.
    [Fact]
    public void Reach_along_the_neck()
    {
        double[] reaches = [.. s_positions.Select(position => Fingering.Of(position.Voicing, Hand.Large).Value.ReachMillimetres).Order()];
        double most = reaches[reaches.Length * 90 / 100];
        output.WriteLine($"90 % reach {most:0.0} mm, 99 % {reaches[reaches.Length * 99 / 100]:0.0} mm, all {reaches[^1]:0.0} mm");
        Assert.Equal(77.2, most, 0.1);
        Assert.Equal(97.3, reaches[reaches.Length * 99 / 100], 0.1);
    }

    [Fact]
    public void Fingers_agree_with_the_data_set_in_five_positions_of_six()
    {
        static IEnumerable<int> Fingers(Voicing voicing) => Fingering.Of(voicing, Hand.Large).Value.ByString.Select(finger => (int)finger);
        int same = s_positions.Count(position => Fingers(position.Voicing).SequenceEqual(position.Fingers));
        output.WriteLine($"the same finger on every string in {same} of {s_positions.Length}, {(double)same / s_positions.Length:P1}");
        Assert.InRange((double)same / s_positions.Length, 0.84, 1.0);
    }

    private static IEnumerable<(Voicing Voicing, int[] Fingers)> Read()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "chords.json")));
        var setup = Setup.Open(Tuning.Standard);
        foreach (JsonElement entry in file.RootElement.GetProperty("entries").EnumerateArray())
        {
            var frets = entry.GetProperty("frets").EnumerateArray().Select(fret => fret.GetInt32());
            var stops = frets.Select(fret => fret < 0 ? StringStop.Muted : fret == 0 ? StringStop.Ringing : StringStop.At(Fret.Of(fret)));
            int[] fingers = [.. entry.GetProperty("fingers").EnumerateArray().Select(finger => finger.GetInt32())];
            yield return (Voicing.Create(setup, Fretting.Of([.. stops])).Value, fingers);
        }
    }
}
