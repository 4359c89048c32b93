using System.Text.Json;

namespace Clampwise.Tests.Commands;

public class FindCommandTests
{
    // Two independent programs agree on these counts; their definitions stand in tests/data/README.md and FrettingCounter.
    [Theory]
    [InlineData("standard", "one", 1, false, "266509")]
    [InlineData("standard + 3-5@2", "any", 1, false, "281583")]
    [InlineData("standard + full@2 + 3-5@4", "one", 3, true, "84569")]
    public void The_count_is_printed_alone(string setup, string barres, int minStrings, bool isUnbroken, string count)
    {
        string[] args = ["find", setup, "--max-fret", "14", "--span", "4", "--fingers", "4", "--barres", barres, "--min-strings", $"{minStrings}", "--count", .. isUnbroken ? ["--unbroken"] : Array.Empty<string>()];
        Assert.Equal($"{count}\n", CommandRun.Of(args).Out);
    }

    [Fact]
    public void Weights_add_up_to_the_score_and_the_best_come_first()
    {
        CommandRun run = CommandRun.Of("find", "standard + 3-5@2", "--sounding", "E", "--limit", "5", "--json");
        JsonElement[] rows = [.. run.Lines.Select(line => JsonDocument.Parse(line).RootElement)];
        Assert.Equal(5, rows.Length);
        Assert.All(rows, row => Assert.Equal("E", row.GetProperty("soundingName").GetString()));
        Assert.All(rows, row => Assert.Equal(row.GetProperty("score").GetDouble(), row.GetProperty("weights").EnumerateArray().Sum(weight => weight.GetProperty("points").GetDouble()), tolerance: 1e-9));

        // A hand that is much like one before it stands back by less than half a point.
        double[] scores = [.. rows.Select(row => row.GetProperty("score").GetDouble())];
        Assert.All(scores.Zip(scores.Skip(1)), pair => Assert.True(pair.Second >= pair.First - 0.4));
    }

    [Theory]
    [InlineData(null, int.MaxValue)]
    [InlineData(80, 80)]
    [InlineData(200, 200)]
    public void A_line_is_as_wide_as_the_terminal_and_whole_in_a_pipe(int? columns, int most)
    {
        CommandRun run = CommandRun.In(around => around with { Size = () => columns is { } wide ? (wide, 24) : null }, "", "find", "standard + 3-5@2", "--sounding", "A", "--near", "005400", "--limit", "30");
        Assert.Equal(31, run.Lines.Length);
        Assert.All(run.Lines, line => Assert.InRange(line.Length, 1, most));
        Assert.All(run.Lines[1..], line => Assert.Matches("shape (G|major).*  sounds (A|major).* (no|one|two|three|four) fingers?", line));
        CommandRun setup = CommandRun.In(around => around with { Size = () => columns is { } wide ? (wide, 24) : null }, "", "setup", "standard + full@1 + 1-5@3");
        Assert.All(setup.Lines, line => Assert.InRange(line.Length, 1, most));
    }

    [Theory]
    [InlineData("--shape", "Hm7", "--shape: column 1:")]
    [InlineData("--keep", "1-7", "--keep: column 3: there is no string 7")]
    [InlineData("--near", "x0x", "--near:")]
    [InlineData("--position", "0", "--position: expected a fret from 1 to 24, found 0")]
    [InlineData("--barres", "two", "--barres: expected one or any")]
    public void What_cannot_be_asked_is_said(string option, string value, string words)
    {
        CommandRun run = CommandRun.Of([.. (string[])["find", "2-4@2", option, value], .. option == "--barres" ? (string[])["--count"] : []]);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"clampwise: {words}", run.Error);
    }

    [Fact]
    public void A_hand_with_strings_muted_is_shown_by_itself_only_when_all_are_asked_for()
    {
        string[] asked = ["find", "standard", "--sounding", "Em", "--limit", "20"];
        Assert.DoesNotContain("02x000", CommandRun.Of(asked).Out);
        Assert.Contains("02x000", CommandRun.Of([.. asked, "--all"]).Out);
        Assert.Contains("also without string 5, 4, 2, 1", CommandRun.Of(asked).Out);
    }

    [Fact]
    public void A_moveable_hand_rings_nowhere_and_a_drone_rings_below_or_above_its_fingers()
    {
        JsonElement[] Rows(params string[] asked) =>
            [.. CommandRun.Of(["find", "standard + 3-5@2", "--shape", "A", "--json", .. asked]).Lines.Select(line => JsonDocument.Parse(line).RootElement)];
        int Ringing(JsonElement row) => row.GetProperty("fretting").GetString()!.Split(' ', StringSplitOptions.RemoveEmptyEntries) is { Length: > 1 } wide
            ? wide.Count(stop => stop == "0") : row.GetProperty("fretting").GetString()!.Count(stop => stop == '0');
        Assert.All(Rows("--moveable"), row => Assert.Equal(0, Ringing(row)));
        Assert.All(Rows("--drone"), row => Assert.True(Ringing(row) >= 2));
    }

    [Fact]
    public void At_a_position_every_finger_lies_within_four_frets_of_it()
    {
        string[] lines = CommandRun.Of("find", "standard", "--sounding", "C", "--position", "5", "--limit", "5").Lines;
        Assert.All(lines[1..], line => Assert.All(line.Split("  ")[0].Replace(" ", "", StringComparison.Ordinal), stop => Assert.Contains(stop, "x05678")));
    }

    [Fact]
    public void An_explanation_says_why_a_hand_cannot()
    {
        CommandRun run = CommandRun.Of("explain", "3-5@2", "0 7 6 7 9 12");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("no hand for it: five fingers needed", run.Out);
    }

    [Fact]
    public void Two_setups_are_compared_by_what_they_give()
    {
        CommandRun run = CommandRun.Of("setup", "2-4@2", "--beside", "3-5@2", "--chords", "A D E");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("string 5 rings A2, free, then B2, held: two semitones up", run.Out);
        Assert.Contains("easy voicing", run.Out);
    }
}
