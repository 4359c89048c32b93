using System.Collections.Concurrent;
using System.CommandLine;
using System.CommandLine.Help;
using Clampwise.Sound.Tests;

namespace Clampwise.Tests.Commands;

/// <summary>
/// No option is dropped: the same line with and without it, in the same folder, comes to something else, while without it twice it comes to
/// the same. Every option of every command must stand in a row here.
/// </summary>
public sealed class OptionEffectTests : IDisposable
{
    // To find takes a while, and depends on nothing but its line.
    private static readonly ConcurrentDictionary<string, LineOutcome> s_found = new();

    private readonly ScratchFolder _folder = new();
    private readonly ScratchFolder _other = new ScratchFolder()
        .With("settings.toml", "[sound]\ndevice = \"hw:9\"\n")
        .With("drills/mine.toml", "title = \"Mine\"\nsetup = \"standard + 2-4@2\"\n\n[[voicing]]\nfretting = \"x04600\"\n");

    public void Dispose()
    {
        _folder.Dispose();
        _other.Dispose();
    }

    /// <summary>A line and what is added to it; $ is a folder with answers in it, ! another one with a drill and settings of its own.</summary>
    public static TheoryData<string, string> Rows => new()
    {
        { "name 2-4@2 x04600", "--json" },
        { "name standard 244222", "--key Db" },
        { "name 2-4@2 104600", "--behind" },
        { "explain 2-4@2 104600", "--behind" },
        { "explain 2-4@2 x04600", "--hand 150" },
        { "explain standard 244222", "--key Db" },
        { "explain 2-4@2 x04600", "--json" },
        { "setup 2-4@2", "--key Db" },
        { "setup 2-4@2", "--json" },
        { "setup 2-4@2", "--beside 3-5@2" },
        { "setup 2-4@2", "--move 1" },
        { "setup 2-4@2 --beside 3-5@2", "--chords E,A" },
        { "setup 2-4@2 --beside 3-5@2", "--json" },
        { "setup 2-4@2 --move 1", "--json" },
        { "setup 2-4@2 --beside 3-5@2 --json", "--chords E,A" },
        { "tune 2-4@2", "--key Db" },
        { "tune 2-4@2", "--a4 442" },
        { "tune 2-4@2", "--json" },
        { "play 2-4@2 x04600", "--stroke up" },
        { "play 2-4@2 x04600", "--string 3" },
        { "play 2-4@2 x04600", "--slower 2" },
        { "play 2-4@2 x04600", "--a4 442" },
        { "play 2-4@2 104600", "--behind" },
        { "play 2-4@2 x04600", "--soundfont $/guitar.sf2" },
        { "play 2-4@2 x04600 --soundfont $/guitar.sf2", "--preset 1" },
        { "play 2-4@2 x04600", "--data !" },
        { "render 2-4@2 x04600 $/a.wav", "--depth 24" },
        { "render 2-4@2 x04600 $/a.wav", "--rate 22050" },
        { "render 2-4@2 x04600 $/a.wav", "--stroke up" },
        { "render 2-4@2 x04600 $/a.wav", "--string 3" },
        { "render 2-4@2 x04600 $/a.wav", "--slower 2" },
        { "render 2-4@2 x04600 $/a.wav", "--a4 442" },
        { "render 2-4@2 x04600 $/a.mid", "--a4 442" },
        { "render 2-4@2 104600 $/a.wav", "--behind" },
        { "render 2-4@2 x04600 $/a.wav", "--soundfont $/guitar.sf2" },
        { "render 2-4@2 x04600 $/a.wav --soundfont $/guitar.sf2", "--preset nonesuch" },
        { "render 2-4@2 x04600", "--output $/b.wav" },
        { "render 2-4@2 x04600", "-o $/c.wav" },
        { "find 2-4@2 --shape D", "--json" },
        { "find 2-4@2 --shape D", "--hand 150" },
        { "find 2-4@2", "--shape D" },
        { "find 2-4@2", "--sounding D" },
        { "find 2-4@2", "--degrees R,3,5" },
        { "find 2-4@2 --shape D", "--top E" },
        { "find 2-4@2 --shape D", "--bass B" },
        { "find 2-4@2 --shape D", "--ringing 4" },
        { "find 2-4@2 --shape D", "--keep 1" },
        { "find 2-4@2 --shape D", "--near x04600" },
        { "find 2-4@2 --shape D", "--hardest 2" },
        { "find 2-4@2 --shape D", "--min-strings 6" },
        { "find 2-4@2 --shape D", "--unbroken" },
        { "find 2-4@2 --bass F2", "--behind" },
        { "find 2-4@2 --shape D", "--max-fret 3" },
        { "find 2-4@2 --shape D", "--span 2" },
        { "find 2-4@2 --shape D", "--limit 3" },
        { "find 2-4@2 --shape D", "--moveable" },
        { "find 2-4@2 --shape G", "--drone" },
        { "find 2-4@2 --shape G --limit 100", "--thumb" },
        { "find 2-4@2 --shape D", "--position 5" },
        { "find 2-4@2 --shape D", "--all" },
        { "find 2-4@2", "--key D" },
        { "find 2-4@2 --limit 3", "--key D" },
        { "find 2-4@2 --shape F#m", "--key Db" },
        { "find 2-4@2", "--count" },
        { "find 2-4@2 --count", "--json" },
        { "find 2-4@2 --count", "--fingers 2" },
        { "find 2-4@2 --count", "--barres any" },
        { "find 2-4@2 --count", "--max-fret 5" },
        { "find 2-4@2 --count", "--span 2" },
        { "find 2-4@2 --count", "--min-strings 5" },
        { "find 2-4@2 --count", "--unbroken" },
        { "drills drone-degrees", "--key Db" },
        { "drills", "--json" },
        { "drills", "--data !" },
        { "explore 2-4@2 x04600 --data $", "--plain" },
        { "explore 2-4@2 x04600 --plain --data $", "--key Db" },
        { "explore --plain", "--data !" },
        { "drill --new --seed 3 --data $", "--plain" },
        { "drill --new --seed 3 --data $", "--minutes 1" },
        { "drill --plain --seed 3 --data $", "--new" },
        { "drill --plain --new --seed 4 --data $", "--seed 3" },
        { "drill mine --plain --new --seed 3", "--data !" },
        { "quiz --new --seed 3 --data $", "--plain" },
        { "quiz --new --seed 3 --data $", "--questions 7" },
        { "quiz --plain --seed 3 --data $", "--new" },
        { "quiz --plain --new --seed 4 --data $", "--seed 3" },
        { "quiz --plain --new --seed 3", "--data !" },
        { "weak --data $", "--json" },
        { "weak --data $", "--plain" },
        { "weak --plain --seed 3 --data $", "--new" },
        { "weak --plain --new --seed 4 --data $", "--seed 3" },
        { "weak", "--data $" },
        { "progress --data $", "--json" },
        { "progress --data $", "--plot $/plot.svg" },
        { "progress", "--data $" },
        { "memory --data $", "--json" },
        { "memory --data $", "--fit" },
        { "memory --data $", "--undo" },
        { "memory --fit", "--data $" },
        { "data check --data $", "--json" },
        { "data check", "--data $" },
        { "data backup --data $", "--json" },
        { "data backup", "--data $" },
        { "data rebuild --data $", "--json" },
        { "data rebuild", "--data $" },
        { "data restore --data $", "--json" },
        { "data restore", "--data $" },
        { "data export --data $", "--csv" },
        { "data export", "--data $" },
        { "data import $/all.jsonl --data $", "--json" },
        { "data import $/all.jsonl", "--data !" },
        { "data merge ! --data $", "--json" },
        { "data merge $", "--data !" },
        { "settings --data $", "--json" },
        { "settings --data $", "--write" },
        { "settings", "--data !" },
        { "doctor --data $", "--json" },
        { "doctor", "--data !" },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void An_option_makes_a_difference(string line, string option)
    {
        Prepare(line + option);
        // The first time may change the folder, such as by an import; from then on it is the same each time.
        Run(line, option);
        LineOutcome without = Run(line, option);
        Assert.Equal(without, Run(line, option));
        LineOutcome with = Run(With(line, option), option);
        Assert.NotEqual(without with { Error = "" }, with with { Error = "" });
        Assert.DoesNotContain("there is no option", without.Error + with.Error);
    }

    [Fact]
    public void Every_option_of_every_command_stands_in_a_row()
    {
        string[] tested = [.. Rows.Select(row => $"{CommandOf((string)row[0])} {NameOf((string)row[1])}")];
        string[] there = [.. CommandTreeTests.Commands().Where(command => command is not RootCommand).SelectMany(command => command.Options
            .Where(option => option is not HelpOption and not VersionOption)
            .SelectMany(option => option.Aliases.Prepend(option.Name).Select(name => $"{CommandTreeTests.PathOf(command)} {name}")))];
        Assert.Empty(there.Except(tested));
        Assert.Empty(tested.Except(there));
    }

    [Theory]
    [InlineData("--data ! drills", "drills --data !")]
    [InlineData("--minutes 1 drill --new --plain --seed 3 --data !", "drill --new --plain --seed 3 --minutes 1 --data !")]
    [InlineData("--minutes 20 drill --new --plain --seed 3 --data !", "drill --new --plain --seed 3 --minutes 20 --data !")]
    public void What_stands_before_the_command_counts_as_after_it(string before, string after)
    {
        Run(before, "");
        Assert.Equal(Run(before, ""), Run(after, ""));
    }

    private static string CommandOf(string line) => string.Join(' ', line.Split(' ').Take(line.StartsWith("data ", StringComparison.Ordinal) ? 2 : 1));

    private static string NameOf(string option) => option.Split(' ')[0];

    // An option that the line has already gets the other value.
    private static string With(string line, string option)
    {
        List<string> words = [.. line.Split(' ')];
        if (words.IndexOf(NameOf(option)) is >= 0 and var at)
        {
            words.RemoveRange(at, 2);
        }

        return $"{string.Join(' ', words)} {option}";
    }

    // Two answers and a backup of them, so that there is something to print; a file to import; a SoundFont.
    private void Prepare(string line)
    {
        if (line.Contains("--data $", StringComparison.Ordinal) || line.Contains(".jsonl", StringComparison.Ordinal) || line.Contains("merge $", StringComparison.Ordinal))
        {
            LineOutcome.Of(_other.Root, "\n\n\n?\n\n\n?\n\nend\n", Words("quiz --plain --questions 2 --seed 1 --data $"));
            Run("data backup --data $", "");
            Run("data export $/all.jsonl --data $", "");
        }

        if (line.Contains(".sf2", StringComparison.Ordinal))
        {
            File.WriteAllBytes(Path.Combine(_folder.Root, "guitar.sf2"), SmallSoundFont.Bytes());
        }
    }

    // A session that waits shows what --new does.
    private LineOutcome Run(string line, string option) => line.StartsWith("find", StringComparison.Ordinal)
        ? s_found.GetOrAdd(line, asked => LineOutcome.Of(_other.Root, "", Words(asked)))
        : LineOutcome.Of(_other.Root, option == "--new" ? "\n\n\n\n?\n\nlater\n" : "\n\n\n\nskip\n\nskip\n\nskip\nend\n", Words(line));

    private string[] Words(string line) =>
        [.. line.Split(' ').Select(word => word.Replace("$", _folder.Root, StringComparison.Ordinal).Replace("!", _other.Root, StringComparison.Ordinal))];
}
