using Clampwise.Streams;
using Clampwise.Tests.Commands;

namespace Clampwise.Tests.Streams;

/// <summary>What the outside does to standard input, output and error. The real descriptors are tried by tests/outside/streams.sh.</summary>
public class StreamTests
{
    [Fact]
    public void A_command_ends_in_silence_when_nobody_reads_any_more()
    {
        CommandRun run = CommandRun.In(around => around with { Out = new Failing(new ReaderGoneException()) }, "", "find", "2-4@2", "--shape", "D");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Theory]
    [InlineData("name 2-4@2 x04600")]
    [InlineData("name 2-4@2 x04600 --json")]
    [InlineData("drills --json")]
    public void An_output_that_takes_nothing_is_one_line_and_exit_code_1(string line)
    {
        CommandRun run = CommandRun.In(around => around with { Out = new Failing(new IOException("no room")) }, "", line.Split(' '));
        Assert.Equal((1, "clampwise: no room\n"), (run.ExitCode, run.Error));
    }

    [Fact]
    public void A_refusal_under_json_survives_an_output_that_takes_nothing()
    {
        CommandRun run = CommandRun.In(around => around with { Out = new Failing(new IOException("no room")) }, "", "name", "2-4@2", "x", "--json");
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("clampwise: fretting", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_the_input_without_an_end_is_refused()
    {
        CommandRun run = CommandRun.In(around => around with { In = new BoundedReader(new StringReader(new string('x', BoundedReader.Most + 1))) }, "", "name", "2-4@2", "-");
        Assert.Equal((2, $"clampwise: a line of the input is longer than {BoundedReader.Most} characters: give one thing a line\n"), (run.ExitCode, run.Error));
    }

    [Theory]
    [InlineData("a\nb\r\n\nc", "a|b||c")]
    [InlineData("a\n", "a")]
    [InlineData("", "")]
    [InlineData("\r\n", "")]
    public void Lines_are_cut_as_everywhere(string text, string lines)
    {
        var reader = new BoundedReader(new StringReader(text));
        var read = new List<string>();
        while (reader.ReadLine() is { } line)
        {
            read.Add(line);
        }

        Assert.Equal(lines, string.Join('|', read));
    }

    [Theory]
    [InlineData("quiz --plain --questions 2 --seed 1 --data $")]
    [InlineData("explore 2-4@2 x04600 --plain --data $")]
    public void A_paste_without_end_ends(string line)
    {
        using var folder = new ScratchFolder();
        CommandRun run = CommandRun.In(around => around with { In = new Endless() }, "", [.. line.Split(' ').Select(word => word.Replace("$", folder.Root, StringComparison.Ordinal))]);
        Assert.Contains("500 lines in a row", run.Out);
        Assert.Empty(CommandRun.Of("data", "export", "--data", folder.Root).Lines);
    }

    private sealed class Failing(IOException failure) : TextWriter
    {
        public override System.Text.Encoding Encoding => System.Text.Encoding.UTF8;

        public override void Write(char value) => throw failure;

        public override void Write(string? value) => throw failure;

        public override void WriteLine(string? value) => throw failure;
    }

    private sealed class Endless : TextReader
    {
        public override string ReadLine() => "y";
    }
}
