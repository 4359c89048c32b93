using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class VoicingComparisonTests
{
    private static readonly Gen<(Voicing First, Voicing Second)> s_pairs = Gens.Setups
        .SelectMany(setup => Gen.Select(Gens.VoicingsIn(setup, 12), Gens.VoicingsIn(setup, 12)));

    private static Voicing In(string setup, string fretting) => Voicing.Parse(Setup.Parse(setup).Value, fretting).Value;

    [Fact]
    public void Every_string_that_differs_is_said_from_the_lowest_up()
    {
        var comparison = VoicingComparison.Of(In("standard + 3-5@2", "006400"), In("standard + 3-5@2", "x04050"));
        Assert.Equal("2-4,6", $"{comparison.Moved}");
        Assert.Equal(
            [
                "string 6: right rings from the nut (E2), yours muted",
                "string 4: right fret 6 (G#3), yours fret 4 (F#3)",
                "string 3: right fret 4 (B3), yours rings from the clamp at 2 (A3)",
                "string 2: right rings from the nut (B3), yours fret 5 (E4)",
            ],
            comparison.Lines("right", "yours"));
    }

    [Fact]
    public void The_same_twice_differs_nowhere()
    {
        Voicing voicing = In("standard + 2-4@2", "x04600");
        Assert.Equal(["no string differs"], VoicingComparison.Of(voicing, voicing).Lines("now", "before"));
    }

    [Fact]
    public void What_is_said_is_what_the_frettings_say() => s_pairs.Holds((first, second) =>
    {
        var comparison = VoicingComparison.Of(first, second);
        StringNumber[] moved = [.. first.Setup.Strings.Where(number => first.Fretting[number] != second.Fretting[number])];
        Assert.Equal(StringSet.Of(moved), comparison.Moved);
        Assert.Equal(comparison.Moved, VoicingComparison.Of(second, first).Moved);
        string[] lines = [.. comparison.Lines("a", "b")];
        Assert.Equal(Math.Max(moved.Length, 1), lines.Length);
        Assert.All(moved.Zip(lines), pair => Assert.StartsWith($"string {pair.First}: a ", pair.Second, StringComparison.Ordinal));
        Assert.All(moved.Zip(lines), pair => Assert.Contains(Said(second.Fretting[pair.First]), pair.Second, StringComparison.Ordinal));
    });

    private static string Said(StringStop stop) => stop.Finger is { } fret ? $", b fret {fret} (" : stop.IsMuted ? ", b muted" : ", b rings from the ";

    [Fact]
    public void Voicings_of_two_setups_are_not_compared() =>
        Assert.Throws<ArgumentException>(() => VoicingComparison.Of(In("standard", "x32010"), In("standard + 2-4@2", "x04600")));
}
