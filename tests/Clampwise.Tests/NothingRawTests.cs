using System.Globalization;
using System.Text.Json.Nodes;
using Clampwise.Storage;
using Clampwise.Tests.Commands;
using Clampwise.Tests.Screens;
using Clampwise.Theory;

namespace Clampwise.Tests;

/// <summary>Every command and every page over data with hostile text in each field that takes text: none of it comes out raw.</summary>
[Collection(nameof(TestTerminal))]
public sealed class NothingRawTests : IDisposable
{
    // A title, a colour and a cleared screen for the terminal; right to left; line ends; a mark at the beginning; half of a pair is left out,
    // since TOML and JSON refuse it.
    private const string Raw = "\u001b]0;own\u0007\u001b[31m\u009b2J\u202e\u2066\u2028\u2029\u0085\ufeff\r\n\tx";
    private static readonly string s_toml = string.Concat(Raw.Select(sign => sign is >= ' ' and <= '~' ? $"{sign}" : $"\\u{(int)sign:X4}"));
    private readonly ScratchFolder _folder = new();
    private readonly ScratchFolder _other = new();

    public void Dispose()
    {
        _folder.Dispose();
        _other.Dispose();
    }

    public static TheoryData<string> Lines => [.. CommandTreeTests.Good.Select(row => (string)row[0]).Concat(CommandTreeTests.Refused.Select(row => (string)row[0]))
        .Concat(OptionEffectTests.Rows.Select(row => $"{row[0]} {row[1]}")).Distinct()];

    [Theory]
    [MemberData(nameof(Lines))]
    public void A_command_prints_nothing_raw(string line)
    {
        Fill();
        string[] words = [.. line.Split(' ').Select(word => word.Replace("$", _folder.Root, StringComparison.Ordinal).Replace("!", _other.Root, StringComparison.Ordinal))];
        AssertClean(CommandRun.WithInput($"{Raw}\n\n\n\n{Raw}\n?\n{Raw}\n?\n\nend\n", words));
        // The same line with each of its words turned hostile, and with one too many.
        for (int at = 0; at <= words.Length; at++)
        {
            AssertClean(CommandRun.WithInput("end\n", [.. words[..at], Raw + (at < words.Length ? words[at] : ""), .. words[Math.Min(words.Length, at + 1)..]]));
        }
    }

    [Fact]
    public void Hostile_text_is_shown_as_escapes()
    {
        Fill();
        Assert.Contains(@"\u001b]0;own\u0007\u001b[31m", CommandRun.Of("drills", "--data", _folder.Root).Out);
        Assert.Contains(@"\u202e", CommandRun.Of("drills", "--json", "--data", _folder.Root).Out);
        Assert.Contains(@"\u202e", CommandRun.Of("data", "export", "--data", _folder.Root).Out);
        Assert.Contains(@"\u202e", CommandRun.Of("data", "export", "--csv", "--data", _folder.Root).Out);
        CommandRun run = CommandRun.Of("doctor", "--data", _folder.Root);
        Assert.Contains(@"\u001b", run.Out + run.Error, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Json_with_escapes_means_the_same_text()
    {
        Fill();
        string?[] titles = [.. CommandRun.Of("drills", "--json", "--data", _folder.Root).Lines.Select(line => JsonNode.Parse(line)!["title"]?.GetValue<string>())];
        Assert.Contains(Raw, titles);
    }

    [Fact]
    public void An_export_with_hostile_text_reads_back_whole()
    {
        Fill();
        string export = Path.Combine(_folder.Root, "all.jsonl");
        CommandRun.Of("data", "export", export, "--data", _folder.Root);
        Assert.Equal(0, CommandRun.Of("data", "import", export, "--data", _other.Root).ExitCode);
        Assert.Equal(CommandRun.Of("data", "export", "--data", _folder.Root).Out, CommandRun.Of("data", "export", "--data", _other.Root).Out);
    }

    [Theory]
    [MemberData(nameof(AllScreensTests.Names), MemberType = typeof(AllScreensTests))]
    public void A_page_shows_nothing_raw(string name)
    {
        using var room = new Room(drills: DrillLibrary.Shipped.Drills.Select(drill => drill with { Title = Raw + drill.Title, Note = Raw }));
        Scenes.Show(name, room);
        // As it goes to the library that draws, which has a way of its own with what cannot be shown.
        string[] rows = [.. room.Frame.Compose(120, 40).Select(row => string.Concat(row.Select(piece => piece.Text)))];
        Assert.All(rows, row => Assert.Equal(row, VisibleText.Of(row)));
        Assert.All(rows, row => Assert.Equal(120, Terminal.Columns.Of(row)));
        Assert.Equal(room.Screen, VisibleText.Of(room.Screen, keepsLineEnds: true));
    }

    [Fact]
    public void A_page_shows_hostile_titles_as_escapes()
    {
        using var room = new Room(drills: DrillLibrary.Shipped.Drills.Select(drill => drill with { Title = Raw }));
        Assert.Contains(@"\u001b]0;own", room.Type("d").Screen);
    }

    [Fact]
    public void A_title_of_wide_signs_keeps_its_columns()
    {
        using var room = new Room(drills: DrillLibrary.Shipped.Drills.Select(drill => drill with { Title = "\u5f26\u697d e\u0301" }));
        Assert.All(room.Type("d").Frame.Compose(80, 24), row => Assert.Equal(80, row.Sum(piece => Terminal.Columns.Of(piece.Text))));
        Assert.Contains("\u5f26\u697d", room.Screen.Replace(" ", "", StringComparison.Ordinal));
    }

    // Titles, notes, file names, settings, answers and a backup's name.
    private void Fill()
    {
        CommandRun.WithInput("\n\n\n?\n\n\n?\n\nend\n", "quiz", "--plain", "--questions", "2", "--seed", "1", "--data", _folder.Root);
        _folder.With("drills/own.toml", $"title = \"{s_toml}\"\nsetup = \"standard + 2-4@2\"\nnote = \"{s_toml}\"\norder = 1\n\n[[voicing]]\nfretting = \"x04600\"\nnote = \"{s_toml}\"\n")
            .With("drills/bad.toml", $"title = \"{s_toml}\"\nsetup = \"{s_toml}\"\n\"{s_toml}\" = 1\n")
            .With("settings.toml", $"[sound]\ndevice = \"{s_toml}\"\n\"{s_toml}\" = 3\n[practice]\nhand = \"{s_toml}\"\n")
            .With("session.json", $"{{\"{Raw}\":1}}");
        if (!OperatingSystem.IsWindows())
        {
            _folder.With($"drills/{Raw}.toml", $"{Raw} = {Raw}").With($"backups/2026-03-02-000009-{Raw}.jsonl.gz", Raw);
        }

        string[] lines = CommandRun.Of("data", "export", "--data", _folder.Root).Lines;
        string hostile = Path.Combine(_folder.Root, "hostile.jsonl");
        File.WriteAllLines(hostile, lines.Select((line, index) => Hostile(line, index)));
        Assert.NotEqual(1, CommandRun.Of("data", "import", hostile, "--data", _folder.Root).ExitCode);
    }

    // Every text of an entry that is free.
    private static string Hostile(string line, int index)
    {
        JsonObject entry = JsonNode.Parse(line)!.AsObject();
        entry.Remove("crc");
        entry["id"] = entry["id"]!.GetValue<string>()[..^2] + index.ToString("x2", CultureInfo.InvariantCulture);
        foreach (string free in (string[])["setup", "answer", "expected"])
        {
            if (entry.ContainsKey(free))
            {
                entry[free] = Raw;
            }
        }

        return entry.ToJsonString();
    }

    private static void AssertClean(CommandRun run)
    {
        foreach (string text in (string[])[run.Out, run.Error])
        {
            // A table for spreadsheets begins with its mark, and has line ends within its quotes (RFC 4180).
            bool isTable = text.StartsWith('\ufeff');
            string body = isTable ? text[1..] : text;
            Assert.Equal(body, VisibleText.Of(body, keepsLineEnds: true));
            Assert.True(isTable || !text.Contains("\n\\u0009x", StringComparison.Ordinal), text);
        }
    }
}
