using System.Text.Json;

namespace Clampwise.Tests.Commands;

public class NameCommandTests
{
    [Fact]
    public void Json_has_names_readings_and_strings()
    {
        CommandRun run = CommandRun.Of("name", "2-4@2", "002220", "--json");
        Assert.Equal("clampwise: fretting: column 3: string 4 is held by the clamp at 2: a finger at fret 2 changes nothing, use a fret above 2 or 0\n", run.Error);
        Assert.Equal(2, run.ExitCode);

        run = CommandRun.Of("name", "2-4@2", "x04600", "--json");
        Assert.Equal(0, run.ExitCode);
        JsonElement row = JsonDocument.Parse(run.Out).RootElement;
        Assert.Equal("standard + 2-4@2", row.GetProperty("setup").GetString());
        Assert.Equal("x04600", row.GetProperty("fretting").GetString());
        Assert.Equal([null, 45, 54, 61, 61, 64], row.GetProperty("strings").EnumerateArray().Select(s => s.GetProperty("midi")).Select(m => m.ValueKind == JsonValueKind.Null ? (int?)null : m.GetInt32()));
        Assert.Equal(["muted", "ringing", "fretted", "fretted", "ringing", "ringing"], row.GetProperty("strings").EnumerateArray().Select(s => s.GetProperty("state").GetString()));
        Assert.Equal([6, 5, 4, 3, 2, 1], row.GetProperty("strings").EnumerateArray().Select(s => s.GetProperty("string").GetInt32()));
    }

    [Fact]
    public void Many_from_standard_input_go_on_past_a_bad_one()
    {
        CommandRun run = CommandRun.WithInput("x04600\n\nx0x\n^ x 0 2 4 0 0\n", "name", "2-4@2", "-", "--json");
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(3, run.Lines.Length);
        JsonElement bad = JsonDocument.Parse(run.Lines[1]).RootElement;
        Assert.Equal(3, bad.GetProperty("line").GetInt32());
        Assert.Contains("expected 6 strings, lowest first, found 3", bad.GetProperty("error").GetString());
        Assert.Equal(run.Lines[0], run.Lines[2]);
        Assert.Equal("clampwise: 1 of 4 lines could not be read\n", run.Error);
    }

    [Theory]
    [InlineData("2-9@2", "x04600", "there is no string 9")]
    [InlineData("2-4@2", "x0460", "expected 6 strings, lowest first, found 5")]
    [InlineData("2-4@25", "x04600", "expected the clamp's fret, 1 to 24")]
    [InlineData("full@3 + 2-4@2", "000000", "put the partial clamp above fret 3")]
    [InlineData("2-4@2", "1x0000", "column 1: string 6: a finger at fret 1 reaches behind clamp 2-4@2")]
    public void Bad_input_is_one_line_and_exit_code_2(string setup, string fretting, string words)
    {
        CommandRun run = CommandRun.Of("name", setup, fretting);
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Out);
        Assert.Contains(words, run.Error);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("--json")]
    [InlineData("--json=true")]
    [InlineData("--json:True")]
    public void However_JSON_is_asked_for_what_is_wrong_is_an_object(string option)
    {
        CommandRun run = CommandRun.Of("name", "2-4@2", "bad", option);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("{\"error\":", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("clampwise: there is no option --jsn here, did you mean --json? (see clampwise name --help)", "name", "2-4@2", "x04600", "--jsn")]
    [InlineData("clampwise: --minutes: expected 1 to 120, found 0 (see clampwise --help)", "--minutes", "0")]
    [InlineData("clampwise: --minutes: expected a whole number, found 'abc' (see clampwise --help)", "--minutes", "abc")]
    [InlineData("clampwise: every string is muted: there is nothing to hear", "render", "2-4@2", "xxxxxx", "silence.wav")]
    [InlineData("clampwise: a WAV file ends in .wav, a MIDI file in .mid, found 'a.mp3'", "render", "2-4@2", "x04600", "a.mp3")]
    [InlineData("clampwise: --depth: expected 16, 24 or float, found '8'", "render", "2-4@2", "x04600", "a.wav", "--depth", "8")]
    [InlineData("clampwise: --string: there is no string 7: strings are numbered 1, the highest, to 6", "play", "2-4@2", "x04600", "--string", "7")]
    [InlineData("clampwise: --stroke: expected one of down, up, block, arpeggio, found 'sideways'", "play", "2-4@2", "x04600", "--stroke", "sideways")]
    public void Options_are_checked(string words, params string[] args)
    {
        CommandRun run = CommandRun.Of(args);
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(words, run.Error.TrimEnd());
    }

    [Fact]
    public void A_file_that_cannot_be_written_is_trouble_outside_the_input()
    {
        // A file where a folder would have to be: refused to everybody, root included.
        using ScratchFolder folder = new ScratchFolder().With("file", "");
        Assert.Equal(1, CommandRun.Of("render", "2-4@2", "x04600", Path.Combine(folder.Root, "file", "chord.wav")).ExitCode);
    }

    [Fact]
    public void A_finger_behind_the_clamp_is_allowed_when_asked_for() =>
        Assert.Equal(0, CommandRun.Of("name", "2-4@2", "1x0000", "--behind").ExitCode);
}
