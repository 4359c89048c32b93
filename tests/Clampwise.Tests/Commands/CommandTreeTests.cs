using System.CommandLine;
using System.Text.Json;
using Clampwise.Commands;
using Clampwise.Storage;

namespace Clampwise.Tests.Commands;

/// <summary>
/// The whole command line through its real entry point: every command with every option, what goes together and what does not, JSON in
/// results and in errors, help. What each option does is in <see cref="OptionEffectTests"/>.
/// </summary>
public sealed class CommandTreeTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>Lines that must be carried out, each with words of what they print; $ is a folder with answers in it, ! another one.</summary>
    public static TheoryData<string, string> Good => new()
    {
        { "name 2-4@2 x04600", "shape name     G6" },
        { "name 2-4@2 x04600 --json", "\"shapeName\":" },
        { "name 2-4@2 104600 --behind", "string 4" },
        { "explain 2-4@2 x04600 --hand small", "as " },
        { "explain 2-4@2 104600 --behind --json", "\"readings\":" },
        { "setup 2-4@2", "home at fret 2" },
        { "setup 2-4@2 --json", "\"openStrings\":" },
        { "setup 2-4@2 --beside 3-5@2", "string" },
        { "setup 2-4@2 --beside 3-5@2 --json", "\"other\":\"standard + 3-5@2\"" },
        { "setup 2-4@2 --beside 3-5@2 --chords E,A --json", "\"easy\":" },
        { "setup 2-4@2 --beside 3-5@2 --chords E,A", "E:" },
        { "setup 2-4@2 --move 1", "standard + 2-4@3" },
        { "setup 2-4@2 --move -1", "standard + 2-4@1" },
        { "setup 2-4@2 --move 1 --json", "\"to\":\"standard + 2-4@3\"" },
        { "tune 2-4@2 --a4 442", "string 1" },
        { "tune 2-4@2 --json", "\"hertz\":" },
        { "play 2-4@2 x04600 --stroke up --slower 2 --a4 442 --data $", "" },
        { "play 2-4@2 104600 --behind --string 1", "" },
        { "play 2-4@2 x04600 --soundfont $/none.sf2 --preset 1", "" },
        { "render 2-4@2 x04600 $/a.wav --depth 24 --rate 22050 --slower 1.5 --a4 442", "" },
        { "render 2-4@2 104600 --behind --output $/b.wav --stroke block --depth float", "" },
        { "render 2-4@2 x04600 -o $/c.mid --string 2", "" },
        { "render 2-4@2 x04600 $/d.wav --soundfont $/none.sf2 --preset 1", "" },
        { "find 2-4@2 --shape D --limit 3", "voicings in" },
        { "find 2-4@2 --sounding E --min-strings 4 --unbroken --hardest 5 --limit 2 --json", "\"soundingName\":\"E\"" },
        { "find 2-4@2 --degrees R,3,5 --top E --bass E --ringing 1 --keep 1 --max-fret 9 --span 3 --hand large", "in standard + 2-4@2" },
        { "find 2-4@2 --near x04600 --behind --limit 1", "the best 1" },
        { "find 2-4@2 --shape A --moveable --thumb --position 5 --all --limit 2", "the best 2" },
        { "find 2-4@2 --shape G --drone --limit 2", "  moves to " },
        { "find 2-4@2 --key G", "G counted from home in standard + 2-4@2, sounds A" },
        { "find 2-4@2 --count --fingers 1 --barres any --max-fret 5 --span 3 --min-strings 4 --unbroken", "" },
        { "find 2-4@2 --count --fingers 1 --json", "\"frettings\":" },
        { "drills --data $", "first-six" },
        { "drills first-six --json --data $", "\"soundingName\":" },
        { "explore 2-4@2 x04600 --plain --data $", "Shape name G6" },
        { "drill first-six --plain --seed 3 --new --minutes 5 --data $", "first" },
        { "quiz --questions 2 --plain --seed 3 --new --data $", "2 questions" },
        { "weak --json --data $", "" },
        { "weak --plain --seed 3 --new --data $", "" },
        { "progress --data $", "one day practised" },
        { "progress --json --data $", "\"kind\":\"week\"" },
        { "progress --json --data $", "\"kind\":\"shape\"" },
        { "progress --json --data $", "\"kind\":\"still-had\"" },
        { "progress --plot $/plot.svg --data $", "" },
        { "memory --data $", "published weights" },
        { "memory --json --data $", "\"fitted\":false" },
        { "memory --fit --data $", "stays as it is" },
        { "memory --undo --json --data $", "nothing to take back" },
        { "data check --data $", "in the journal" },
        { "data check --json --data $", "\"journalEntries\":" },
        { "data backup --data $", "2000-01-01" },
        { "data backup --json --data $", "\"backup\":" },
        { "data rebuild --data $", "in the database" },
        { "data rebuild --json --data $", "\"entries\":" },
        { "data export --data $", "attempt" },
        { "data export $/all.csv --csv --data $", "" },
        { "settings --write --json --data $", "settings.toml\"" },
        { "settings --data $", "session.minutes" },
        { "settings --json --data $", "\"key\":\"session.minutes\"" },
        { "doctor --data $", "ok     program" },
        { "doctor --json --data $", "\"part\":\"program\"" },
    };

    [Theory]
    [MemberData(nameof(Good))]
    public void A_line_is_carried_out(string line, string words)
    {
        Practise();
        CommandRun run = Run(line);
        Assert.True(run.ExitCode == 0 || line.Contains("none.sf2", StringComparison.Ordinal), run.Error);
        Assert.Contains(words, run.Out);
        if (line.Contains("--json", StringComparison.Ordinal))
        {
            Assert.All(run.Lines, json => JsonDocument.Parse(json).Dispose());
        }
    }

    [Fact]
    public void Files_that_were_asked_for_are_there()
    {
        Practise();
        Run("render 2-4@2 x04600 $/a.wav --depth 24");
        Run("render 2-4@2 x04600 $/a.mid");
        Run("progress --plot $/plot.png --data $");
        Run("data export $/all.jsonl --data $");
        Assert.Equal("RIFF", System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(In("a.wav")), 0, 4));
        Assert.Equal("MThd", System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(In("a.mid")), 0, 4));
        Assert.Equal("PNG", System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(In("plot.png")), 1, 3));
        Assert.Equal(Run("data export --data $").Out, File.ReadAllText(In("all.jsonl")));
    }

    [Fact]
    public void What_a_backup_an_export_or_another_folder_holds_is_brought_in_once()
    {
        Practise();
        int answers = Run("data export --data $").Lines.Length;
        Run("data backup --data $");
        Run("data export $/all.jsonl --data $");
        string backup = Path.GetFileName(Assert.Single(Directory.GetFiles(In("backups"))));
        foreach (string way in (string[])["data import $/all.jsonl --data !", "data merge $ --json --data !"])
        {
            using var other = new ScratchFolder();
            string line = way.Replace("!", other.Root, StringComparison.Ordinal);
            CommandRun first = Run(line);
            Assert.Equal(0, first.ExitCode);
            Assert.Contains(way.Contains("--json", StringComparison.Ordinal) ? $"\"added\":{answers}" : $"{answers} of them new", first.Out);
            Assert.Contains("0", Run(line).Out);
            Assert.Equal(answers, Run($"data export --data {other.Root}").Lines.Length);
        }

        foreach (string journal in Directory.GetFiles(_folder.Root, "*journal*").Concat(Directory.GetFiles(_folder.Root, "*.db")))
        {
            File.Delete(journal);
        }

        Assert.Contains($"\"added\":{answers}", Run($"data restore {backup} --json --data $").Out);
        Assert.Equal(answers, Run("data export --data $").Lines.Length);
        Assert.Contains("0 of them new", Run("data restore --data $").Out);
    }

    /// <summary>Lines that are refused, with what is said.</summary>
    public static TheoryData<string, string> Refused => new()
    {
        { "setup 2-4@2 --beside 3-5@2 --move 1", "--beside leaves no use for --move" },
        { "setup 2-4@2 --chords E", "--chords means something only with --beside" },
        { "setup 2-4@2 --move 0", "--move: expected frets to move by" },
        { "play 2-4@2 x04600 --preset 1", "--preset means something only with --soundfont" },
        { "play 2-4@2 x04600 --stroke up --string 2", "--string leaves no use for --stroke" },
        { "render 2-4@2 x04600 a.wav --output b.wav", "--output leaves no use for the word for file" },
        { "render 2-4@2 x04600 $/a.mid --depth 24", "--depth means nothing to a MIDI file" },
        { "render 2-4@2 x04600 $/a.mid --rate 48000", "--rate means nothing to a MIDI file" },
        { "render 2-4@2 x04600 $/a.mid --soundfont x.sf2", "--soundfont means nothing to a MIDI file" },
        { "render 2-4@2 x04600", "no file was named" },
        { "find 2-4@2 --count --shape D", "--count leaves no use for --shape" },
        { "find 2-4@2 --count --limit 3", "--count leaves no use for --limit" },
        { "find 2-4@2 --count --hand small", "--count leaves no use for --hand" },
        { "find 2-4@2 --count --moveable", "--count leaves no use for --moveable" },
        { "find 2-4@2 --key G --count", "--count leaves no use for --key" },
        { "find 2-4@2 --moveable --drone", "--moveable leaves no use for --drone" },
        { "tune 2-4@2 --key H", "--key: column 1: expected a note letter A to G" },
        { "name 2-4@2 x04600 --key G#", "--key: column 1: G# has no signature of at most seven sharps or flats: give the key that sounds the same, such as Ab for G#" },
        { "drills --key G", "--key means something only with a word for id" },
        { "find 2-4@2 --fingers 3", "--fingers means something only with --count" },
        { "find 2-4@2 --barres any", "--barres means something only with --count" },
        { "weak --plain --json", "--plain leaves no use for --json" },
        { "weak --seed 3", "--seed means something only with --plain" },
        { "weak --new", "--new means something only with --plain" },
        { "progress --plot a.svg --json", "--plot leaves no use for --json" },
        { "memory --fit --undo", "--fit leaves no use for --undo" },
        { "name 2-4@2 x04600 --data x", "there is no option --data here" },
        { "--data x name 2-4@2 x04600", "--data means nothing to name" },
        { "quiz --minutes 5", "there is no option --minutes here" },
        { "--minutes 5 quiz", "--minutes means nothing to quiz" },
        { "quiz --count 5", "there is no option --count here" },
        { "find 2-4@2 --shap D", "there is no option --shap here, did you mean --shape?" },
        { "fnid --json", "there is no command 'fnid', did you mean find?" },
        { "find 2-4@2 --shape D --sounding E", "--shape leaves no use for --sounding" },
        { "tune 2-4@2 --a4 442,5", "--a4: expected a number, found '442,5'" },
        { "fnid 2-4@2", "there is no command 'fnid', did you mean find?" },
        { "data bakcup", "there is no command 'bakcup', did you mean backup?" },
        { "data", "expected one of check, backup, rebuild, restore, export, import, merge" },
        { "find", "the setup is missing" },
        { "setup 2-4@2 extra", "'extra' is a word too many" },
        { "find 2-4@2 --limit many", "--limit: expected a whole number, found 'many'" },
        { "find 2-4@2 --limit 3 --limit 4", "--limit stands there 2 times" },
        { "find 2-4@2 --shape", "--shape: expected <name> after it" },
        { "drill --minutes 0 --plain", "--minutes: expected 1 to 120, found 0" },
        { "data import $/none.jsonl --data $", "none.jsonl" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_line_is_refused_in_one_line_of_our_own_words(string line, string words)
    {
        CommandRun run = Run(line);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(words, run.Error);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.DoesNotContain("System.", run.Error);
        Assert.DoesNotContain("Option", run.Error);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Under_json_what_is_wrong_is_an_object_on_standard_output_too(string line, string words)
    {
        CommandRun run = Run(line.Contains("--json", StringComparison.Ordinal) ? line : $"{line} --json");
        Assert.Equal(2, run.ExitCode);
        using var json = JsonDocument.Parse(Assert.Single(run.Lines));
        Assert.Equal(2, json.RootElement.GetProperty("exitCode").GetInt32());
        Assert.NotEqual("", json.RootElement.GetProperty("error").GetString());
        Assert.NotEqual("", words);
    }

    [Fact]
    public void Json_is_there_wherever_results_are_printed()
    {
        string[] without = ["", "data", "data export", "play", "render", "explore", "drill", "quiz"];
        Assert.All(Commands().Where(command => !without.Contains(PathOf(command))), command => Assert.Contains(command.Options, option => option.Name == "--json"));
    }

    [Fact]
    public void Help_has_examples_that_can_be_typed_and_exit_codes()
    {
        foreach (Command command in Commands().Where(command => command is not RootCommand))
        {
            CommandRun help = Run($"{PathOf(command)} --help");
            Assert.Contains("Exit codes: 0", help.Out);
            IReadOnlyList<string> examples = Assert.IsType<Verb>(command).Examples;
            Assert.NotEmpty(examples);
            foreach (string example in examples)
            {
                Assert.Contains($"  clampwise {example}", help.Out);
                string[] words = [.. System.CommandLine.Parsing.CommandLineParser.SplitCommandLine(example.Replace('\'', '"'))];
                Assert.Null(Slips.First(CommandTree.Build(Surroundings.OfThisProcess()).Parse(words)));
            }
        }
    }

    [Theory]
    [InlineData("50")]
    [InlineData("80")]
    [InlineData("132")]
    public void Rows_keep_to_the_columns_that_there_are_and_are_whole_in_a_pipe(string columns)
    {
        foreach (string line in (string[])["setup 2-4@2", "doctor --data $", "settings --data $", "setup 2-4@2 --move 2", "setup 2-4@2 --beside 3-5@2 --chords E,A", "tune 2-4@2", "data check --data $", "name 2-4@2 x04600", "explain 2-4@2 x04600", "drills first-six --data $", "weak --data $", "progress --data $", "memory --data $"])
        {
            Practise();
            CommandRun whole = Run(line);
            CommandRun fitted = CommandRun.In(around => around with { Variable = name => name == "COLUMNS" ? columns : null }, "", Words(line));
            // A path is one word, and is never cut.
            int most = int.Parse(columns, System.Globalization.CultureInfo.InvariantCulture);
            Assert.All(fitted.Lines, row => Assert.True(row.Length <= most || !row.Trim().Contains(' ', StringComparison.Ordinal), row));
            Assert.Equal(Bare(whole.Out), Bare(fitted.Out));
        }
    }

    [Fact]
    public void An_answer_that_cannot_be_kept_is_said_and_the_exit_code_is_1()
    {
        using (ProgressStore other = ProgressStore.Open(_folder.Data, TimeProvider.System).Value)
        {
            Assert.False(other.IsReadOnly);
            CommandRun run = CommandRun.WithInput("\n\n\n?\n\nend\n", "quiz", "--plain", "--questions", "2", "--seed", "1", "--data", _folder.Root);
            Assert.Equal(1, run.ExitCode);
        }

        Assert.Empty(Run("data export --data $").Lines);
        Assert.Equal(0, CommandRun.WithInput("\n\n\n?\n\nend\n", "quiz", "--plain", "--questions", "2", "--seed", "1", "--data", _folder.Root).ExitCode);
        Assert.NotEmpty(Run("data export --data $").Lines);
    }

    private static string Bare(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>All commands of the tree, the bare one first.</summary>
    internal static IEnumerable<Command> Commands()
    {
        RootCommand root = CommandTree.Build(Surroundings.OfThisProcess());
        return Under(root);

        static IEnumerable<Command> Under(Command command) => command.Subcommands.SelectMany(Under).Prepend(command);
    }

    /// <summary>The words that a command is called by.</summary>
    internal static string PathOf(Command command) =>
        command is RootCommand ? "" : command.Parents.OfType<Command>().First() is RootCommand ? command.Name : $"{command.Parents.OfType<Command>().First().Name} {command.Name}";

    private string In(string file) => Path.Combine(_folder.Root, file);

    private string[] Words(string line) => [.. line.Split(' ').Select(word => word.Replace("$", _folder.Root, StringComparison.Ordinal))];

    private CommandRun Run(string line) => CommandRun.WithInput("", Words(line));

    // Two answers, so that there is something to print.
    private void Practise() => CommandRun.WithInput("\n\n\n?\n\n\n?\n\nend\n", "quiz", "--plain", "--questions", "2", "--seed", "1", "--data", _folder.Root);
}
