using Clampwise.Sound.Players;
using Clampwise.Tests.Commands;
using CsCheck;

namespace Clampwise.Tests.Plain;

public sealed class PlainExplorerTests : IDisposable
{
    private static readonly string[] s_words =
    [
        "3", "fret", "4", "^2", "mute", "ring", "x04400", "^", "-1", "find", "D", "top", "keep", "1-3", "next", "back", "take", "99", "undo", "compare", "capo", "up", "down",
        "setup", "2-4@2", "full@1", "+", "hear", "open", "before", ",", "and", "to", "\t", "♯", "x", "0", "=", "near", "limit", "max-fret", "span", "clear", "turn", "found", ":", "string",
    ];

    private readonly string _data = Directory.CreateTempSubdirectory("clampwise-explore").FullName;
    private readonly CapturedOut _sound = new();

    public void Dispose()
    {
        Directory.Delete(_data, recursive: true);
        _sound.Dispose();
    }

    [Theory]
    [InlineData("3 fret 4", "000400")]
    [InlineData("string 3 fret 4", "000400")]
    [InlineData("3 4", "000400")]
    [InlineData("3: f4", "000400")]
    [InlineData("3 at ^2", "000400")]
    [InlineData("  3   Fret   4", "000400")]
    [InlineData("1,2 fret 3", "000033")]
    [InlineData("1 and 2 fret 3", "000033")]
    [InlineData("1-2 fret 3", "000033")]
    [InlineData("1 to 3 fret 5", "000555")]
    [InlineData("strings 5 and 6 mute", "xx0000")]
    [InlineData("mute 5-6", "xx0000")]
    [InlineData("6 x", "x00000")]
    [InlineData("6 fret ^=", "200000")]
    [InlineData("6 fret ^-1", "100000")]
    [InlineData("x04400", "x04400")]
    [InlineData("X 0 4 4 0 0", "x04400")]
    [InlineData("x,0,4,4,0,0", "x04400")]
    [InlineData("^ x 0 2 2 0 0", "x04400")]
    [InlineData("^x02200", "x04400")]
    public void A_line_puts_the_hand_down(string line, string fretting) =>
        Assert.EndsWith($"from the nut {fretting}.", Explore(line).Lines.Last(said => said.StartsWith("Shape name", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Fact]
    public void Names_are_spelled_in_the_key_that_is_asked_for_until_it_is_off()
    {
        string[] said = [.. Explore("setup 2-4@2", "x04600", "key", "key db", "undo", "key off").Lines];
        Assert.Contains("Names are spelled in G counted from home, which sounds A.", said);
        Assert.Contains("Names are spelled in Db counted from home, which sounds Eb.", said);
        Assert.Equal("Names are spelled in G counted from home, which sounds A.", said.Last(line => line.StartsWith("Names are", StringComparison.Ordinal)));
        Assert.Contains("column 5: expected a note letter", Explore("key h").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3 fret 40", "column 8: fret 40 is off the neck")]
    [InlineData("9 fret 4", "column 1: there is no string 9")]
    [InlineData("mute 9", "column 6: there is no string 9")]
    [InlineData("3", "column 2: say what string 3 should do")]
    [InlineData("3 fret", "column 7: say what string 3 should do")]
    [InlineData("mute", "column 5: expected strings such as 3, 2-4 or 1,3,5, found nothing")]
    [InlineData("3 mute 4", "column 8: expected nothing after 'mute', found '4'")]
    [InlineData("3 jump", "column 3: expected a fret from the nut (4) or after ^ from the home clamp (^2), mute or ring, found 'jump'")]
    [InlineData("3 fret 4 5", "column 10: expected nothing after '4', found '5'")]
    [InlineData("4 fret 2", "column 8: string 4 is held by the clamp at 2: a finger at fret 2 changes nothing")]
    [InlineData("x0440", "column 6: expected 6 strings, lowest first, found 5")]
    [InlineData("  x02400", "column 5: string 4 is held by the clamp at 2")]
    [InlineData("jump", "column 1: 'jump' is no word here")]
    [InlineData("find Hm", "column 6: expected a note letter")]
    [InlineData("find D top", "column 11: expected a note letter")]
    [InlineData("find top E ringing lots", "column 20: expected a number, found 'lots'")]
    [InlineData("find keep 1-7", "column 13: there is no string 7")]
    [InlineData("find near x0", "column 13: expected 6 strings")]
    [InlineData("find D max-fret 99", "the highest fret is 99: give 1 to 24")]
    [InlineData("capo", "column 5: expected up, down, at and a fret, or off, found nothing")]
    [InlineData("capo sideways", "column 6: expected up, down, at and a fret, or off, found 'sideways'")]
    [InlineData("capo up lots", "column 9: expected a number of frets, found 'lots'")]
    [InlineData("capo at 30", "the full capo would come to fret 30")]
    [InlineData("setup standard + 3-5@", "column 22: expected the clamp's fret, 1 to 24, found nothing")]
    [InlineData("setup 99", "column 7: there is no setup 99")]
    [InlineData("compare x0", "column 11: expected 6 strings")]
    [InlineData("hear 9", "column 6: there is no string 9")]
    [InlineData("hear it loud", "column 9: expected a string's number, strings, slower, open or before, found 'loud'")]
    [InlineData("hear before", "there is none before this one yet")]
    public void What_cannot_be_read_says_what_and_where_and_changes_nothing(string line, string words)
    {
        CommandRun run = Explore(line, "");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains(run.Lines, said => said.StartsWith(words, StringComparison.Ordinal));
        Assert.StartsWith("Shape name Dsus4, sounds Esus4, played ^ 0 0 0 0 0 0", run.Lines[^3], StringComparison.Ordinal);
    }

    [Fact]
    public void Each_step_says_both_names_the_string_that_changed_and_the_fingers()
    {
        CommandRun run = Explore("3 fret 4", "4 fret 6");
        Assert.Equal(
            [
                "Shape name D, sounds E, played ^ 0 0 4 2 0 0, from the nut 006400.",
                "string 4 held by the clamp at fret 2, finger 3 at fret 6, G#3, the third",
                "Fingers: 1 at fret 4 on string 3, 3 at fret 6 on string 4; difficulty 2.9.",
                "The end of exploring.",
            ],
            run.Lines[^4..]);
    }

    [Fact]
    public void What_no_hand_can_play_is_still_named_and_says_why() =>
        Assert.Contains("No hand for it: five fingers needed", Explore("0 7 6 7 9 12").Out);

    [Fact]
    public void Two_voicings_are_compared_string_by_string()
    {
        CommandRun run = Explore("006400", "005400", "compare", "compare 006400");
        Assert.Contains("Before: shape name D, sounds E, played ^ 0 0 4 2 0 0, from the nut 006400.", run.Out);
        Assert.Contains("string 4: finger at fret 5, G3, the minor third; before: finger at fret 6, G#3, the third\nFive strings the same in both.", run.Out);
        Assert.Contains("string 4: finger at fret 5, G3, the minor third; that one: finger at fret 6, G#3, the third", run.Out);
    }

    [Fact]
    public void A_marked_voicing_stays_to_compare_with()
    {
        CommandRun run = Explore("compare mark", "006400", "mark", "5 mute", "005400", "compare mark", "setup E2 A2 D3 G3", "compare mark");
        Assert.Contains("Nothing is marked yet", run.Out);
        Assert.Contains("The marked one: shape name D, sounds E, played ^ 0 0 4 2 0 0, from the nut 006400.\nstring 4: finger at fret 5, G3, the minor third; the marked one: finger at fret 6", run.Out);
        Assert.Contains("They have different numbers of strings", run.Out);
    }

    [Fact]
    public void Undo_goes_back_step_by_step_and_over_a_search_in_one()
    {
        CommandRun run = Explore("006400", "5 mute", "find G", "next", "next", "undo", "undo", "undo", "undo");
        string[] held = [.. run.Lines.Where(line => line.StartsWith("Shape name", StringComparison.Ordinal)).Select(line => line[(line.LastIndexOf(' ') + 1)..])];
        Assert.Equal(["0x6400.", "006400.", "000000."], held[^3..]);
        Assert.Contains("There is no step to take back.", run.Out);
    }

    [Fact]
    public void The_full_capo_moves_the_sound_and_leaves_the_shape()
    {
        CommandRun run = Explore("006400", "capo up 2", "capo down", "capo at 3", "capo off");
        string[] names = [.. run.Lines.Where(line => line.StartsWith("Shape name", StringComparison.Ordinal)).Select(line => line.Split(", played")[0])];
        Assert.Equal(["Shape name D, sounds E", "Shape name D, sounds F#", "Shape name D, sounds F", "Shape name D, sounds G", "Shape name D, sounds E"], names[^5..]);
    }

    [Fact]
    public void Voicings_are_found_and_stepped_through()
    {
        CommandRun run = Explore("find sounding A top E max-fret 7 limit 3", "next", "next", "next", "back", "take 1", "take 9", "found");
        Assert.Contains("Found 3 of 3: ", run.Out);
        Assert.Contains("That is the last of them.", run.Out);
        Assert.Contains("column 6: expected a number from 1 to 3, found '9'", run.Out);
        Assert.Contains("\n1: ^ 3 2 0 0 3 0, from the nut 540050: shape G, sounds A; three fingers", run.Out);
        Assert.Contains("Found 1 of", Explore("find --sounding A --min-strings 6").Out);
        Assert.Contains("Found 1 of", Explore("find g/d").Out);
        Assert.Contains("you hold what you held", Explore("find D ringing 6 bass C").Out);
        Assert.Contains("Nothing was found yet", Explore("next").Out);
    }

    [Fact]
    public void What_was_found_is_forgotten_with_its_setup() =>
        Assert.Contains("Nothing was found yet", Explore("find D", "setup 2-4@2", "next").Out);

    [Fact]
    public void A_voicing_is_kept_in_the_own_drill()
    {
        CommandRun run = Explore("006400", "keep");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("006400", CommandRun.Of("drills", "kept-standard-3-5-2", "--data", _data).Out);
    }

    [Fact]
    public void What_could_not_be_kept_shows_in_the_exit_code()
    {
        File.WriteAllText(Path.Combine(_data, "drills"), "a file where the folder should be");
        CommandRun run = Explore("006400", "keep", "end");
        Assert.Equal(1, run.ExitCode);
    }

    [Fact]
    public void The_whole_and_single_strings_are_heard()
    {
        CommandRun run = Explore("x04400", "hear", "hear 4", "hear slower", "hear strings", "hear open", "hear open 6", "hear before", "hear 6", "mute 1-6", "hear");
        Assert.Equal(7, _sound.Played.Count);
        Assert.Equal([5, 1, 5, 5, 6, 1, 11], _sound.Played.Select(performance => performance.Notes.Length));
        Assert.Contains("string 6 is muted", run.Out);
        Assert.Contains("every string is muted: there is nothing to hear", run.Out);
    }

    [Fact]
    public void Setups_are_listed_chosen_and_turned_round()
    {
        CommandRun run = Explore("setups", "setup 2", "turn", "setup", "tune", "explain", "strings", "help");
        Assert.Contains("2: standard + 2-4@2, open strings E2 A2 E3 A3 C#4 E4", run.Out);
        Assert.Contains("Setup standard + 3-5@2: a clamp at fret 2 over strings 3 to 5; strings 1, 2 and 6 free.", run.Out);
        Assert.Contains("82.41 Hz", run.Out);
    }

    [Fact]
    public void The_same_input_gives_the_same_output()
    {
        string[] lines = ["3 fret 4", "find D", "next", "compare", "capo up", "hear", "keep", "setups", "undo"];
        string first = Explore(lines).Out;
        Assert.Equal(first.Replace("2 voicings", "1 voicings", StringComparison.Ordinal), Explore(lines).Out.Replace("2 voicings", "1 voicings", StringComparison.Ordinal));
        Assert.Equal(CommandRun.WithInput("strings\n", "explore", "--plain", "--data", _data).Out, CommandRun.WithInput("strings\n", "explore", "--plain", "--data", _data).Out);
    }

    [Theory]
    [InlineData("setup: column", "explore", "3-5@")]
    [InlineData("fretting: column 3: string 4 is held by the clamp at 2", "explore", "3-5@2", "x02400")]
    public void Bad_arguments_are_refused_before_anything_is_opened(string words, params string[] args)
    {
        CommandRun run = CommandRun.WithInput("", [.. args, "--plain", "--data", _data]);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"clampwise: {words}", run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_data));
    }

    [Fact]
    public void It_starts_with_a_voicing_that_is_given() =>
        Assert.Contains("Shape name D, sounds E", CommandRun.WithInput("", "explore", "3-5@2", "^", "0", "0", "4", "2", "0", "0", "--plain", "--data", _data).Out);

    // Words of the explorer and rubbish in any order: it must never fall over, and always say where the hand is.
    [Fact]
    public void Any_lines_at_all_are_survived() => Gen.Int[0, s_words.Length - 1].Select(index => s_words[index])
        .Array[0, 5].Array[1, 8].Holds(
            lines =>
            {
                CommandRun run = Explore([.. lines.Select(words => string.Join(' ', words)), "setup standard + 3-5@2", "clear", ""]);
                Assert.Equal(0, run.ExitCode);
                Assert.StartsWith("Shape name Dsus4, sounds Esus4", run.Lines[^3], StringComparison.Ordinal);
            },
            count: 60);

    private CommandRun Explore(params string[] lines) => CommandRun.In(
        around => around with { OpenSound = (_, _) => _sound },
        string.Join('\n', lines) + "\n",
        "explore", "3-5@2", "--plain", "--data", _data);
}
