using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;
using Clampwise.Settings;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class SessionPageTests
{
    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void A_wrong_answer_and_the_right_one_on_one_fretboard(int columns, int rows)
    {
        using var room = new Room(columns, rows);
        room.Press(KeyPress.Enter).Type("tdm").Press(KeyPress.Enter).Type("b");
        Golden.Check($"verdict-both-{columns}x{rows}", room.Screen);
        Assert.Contains("string 4: right fret 6 (G#3), yours fret 5 (G3)", room.Screen);
        Assert.DoesNotContain("not G3", room.Screen);
        Assert.Contains("String 4 at fret 6 is the major third.", room.Screen);
        Assert.DoesNotContain("□ yours", room.Type("b").Screen);
        Assert.Contains("not G3", room.Screen);
        Assert.Contains("(yours)", room.Type("by").Screen);
    }

    [Fact]
    public void A_grade_is_changed_without_losing_what_is_looked_at()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("tdm").Press(KeyPress.Enter).Type("b");
        Assert.Contains("□ yours", room.Press(KeyPress.Up).Screen);
        Assert.Contains("Grade: strained", room.Screen);
    }

    [Fact]
    public void A_right_answer_has_nothing_to_compare()
    {
        using var room = new Room();
        Assert.DoesNotContain("□ yours", room.Press(KeyPress.Enter).Type("2b").Screen);
    }

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    public void Nothing_of_a_summary_is_cut(int columns, int rows)
    {
        using var room = new Room(columns, rows);
        room.Press(KeyPress.Enter);
        for (int i = 0; i < 200 && room.Frame.Front is SessionPage; i++)
        {
            GiveUp(room.After(2));
            room.Press(KeyPress.Enter);
        }

        Assert.Contains("Look at again", room.Screen);
        Assert.DoesNotContain(room.Desk.Glyphs.More, room.Screen);
    }

    [Fact]
    public void When_the_day_is_done_it_says_so_and_offers_the_next_shapes_and_listening()
    {
        Drill[] drills = [.. DrillLibrary.Shipped.Drills.Take(2)];
        using var room = new Room(drills: drills);
        room.Press(KeyPress.Enter);
        for (int i = 0; i < 200 && room.Frame.Front is SessionPage; i++)
        {
            GiveUp(room.After(2));
            room.Press(KeyPress.Enter);
        }

        Assert.Contains("That was all that is worth asking today.", room.Screen);
        Assert.Contains($"n  the next shapes, shown first: {drills[1].Title}", room.Screen);
        Assert.Contains("e  by ear alone", room.Screen);
        room.PassesCards = false;
        room.Type("n");
        Assert.Equal(drills[1].Title, room.Frame.Front.Title);
        Assert.Contains("New: ", room.Screen);
    }

    [Fact]
    public void A_change_shows_both_shapes_on_one_fretboard()
    {
        var repertoire = Repertoire.Of(DrillLibrary.Shipped.Drills);
        PracticeItem item = repertoire.Items.First(candidate => candidate.Key.Direction == Direction.ChangeInTime && QuestionMaker.CanAsk(candidate));
        Question question = QuestionMaker.Make(item, new AskContext(repertoire, MemoryState.Empty(FsrsSettings.Usual), new PracticeDay(0), new QuestionOptions(), new Random(7)));
        var pad = AnswerPad.For(question, GlyphSet.Unicode, () => { });
        IEnumerable<Line> lines = [.. FretboardDrawing.Draw(pad.Picture, GlyphSet.Unicode, 78, 12, FretboardStyle.Usual).OnScreen(), .. pad.Draw(78, new HashSet<int>())];
        Golden.Check("change-board", string.Concat(lines.Select(line => line.ToString().TrimEnd() + "\n")));
    }

    // Degrees and pitches would answer the question: they come with the verdict.
    [Theory]
    [InlineData(nameof(DotSign.Degrees))]
    [InlineData(nameof(DotSign.Pitches))]
    public void No_question_shows_what_would_answer_it(string sign)
    {
        using var plain = new Room();
        using var signed = new Room();
        signed.Desk.Use(PlayerSettings.Usual with { HasGuitar = false, Dots = Enum.Parse<DotSign>(sign) }, signed.Desk.Glyphs);
        foreach (Room room in (Room[])[plain, signed])
        {
            room.Press(KeyPress.Enter);
        }

        for (int i = 0; i < 40 && plain.Frame.Front is SessionPage; i++)
        {
            Assert.Equal(plain.Screen, signed.Screen);
            GiveUp(plain.After(3));
            GiveUp(signed.After(3));
            Assert.NotEqual(plain.Screen, signed.Screen);
            plain.Press(KeyPress.Enter);
            signed.Press(KeyPress.Enter);
        }

        Assert.True(plain.Log.Attempts.Select(attempt => attempt.Item.Direction).Distinct().Count() >= 3);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(80, 28)]
    [InlineData(80, 40)]
    [InlineData(200, 50)]
    public void The_fretboard_stays_where_it_is_when_hints_and_the_verdict_come(int columns, int rows)
    {
        using var room = new Room(columns, rows);
        string[] asked = room.Press(KeyPress.Enter).Screen.Split('\n');
        int last = Array.FindLastIndex(asked, line => line.StartsWith(" clamp", StringComparison.Ordinal));
        Assert.Equal(asked[..(last + 1)], room.Type("h").Screen.Split('\n')[..(last + 1)]);
        string[] judged = room.Type("1").Screen.Split('\n')[..(last + 1)];
        Assert.All(asked[4..last].Zip(judged[4..last]), pair => Assert.StartsWith(pair.First, pair.Second));
    }

    [Fact]
    public void Screens_in_ascii_and_in_colour()
    {
        using var ascii = new Room(glyphs: GlyphSet.Ascii);
        ascii.Press(KeyPress.Enter);
        Golden.Check("question-ascii", ascii.Screen);
        Assert.All(ascii.Screen, sign => Assert.InRange(sign, '\n', '~'));
        using var colour = new Room(theme: Theme.Own);
        colour.Press(KeyPress.Enter);
        Golden.Check("question-colour", colour.Colours);
        Assert.DoesNotContain("[38;2", ascii.Colours);
    }

    [Fact]
    public void A_terminal_that_is_too_small_says_so_and_loses_nothing()
    {
        using var room = new Room();
        string question = room.Press(KeyPress.Enter).Screen;
        Assert.Contains("Clampwise needs 60x20.", room.Resize(50, 15).Screen);
        Assert.Equal(question, room.Resize(80, 24).Screen);
    }

    [Fact]
    public void An_answer_is_in_the_log_before_its_verdict_shows()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).After(5).Type("k");
        Attempt attempt = Assert.Single(room.Log.Attempts);
        Assert.True(attempt is { DidNotKnow: true, Grade: Grade.Missed });
        Assert.Contains("Now you know: it is", room.Screen);
    }

    [Fact]
    public void A_log_that_cannot_be_written_is_said()
    {
        using var room = new Room();
        room.Log.Refusal = new Fault("the disk is full: make room, then answer again");
        Assert.Contains("the disk is full", room.Press(KeyPress.Enter).Type("k").Screen);
    }

    [Fact]
    public void The_clock_stands_while_paused_and_goes_on_after()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).After(60).Type("p").After(600);
        Assert.Contains("14:00 left", room.Screen);
        Assert.DoesNotContain("Which chord", room.Screen);
        Assert.Contains("14:00 left", room.Press(KeyPress.Enter).Screen);
        Assert.Contains("13:30 left", room.After(30).Press(KeyPress.Tab).Screen);
    }

    [Fact]
    public void A_session_that_was_left_waits_on_the_first_screen()
    {
        using var room = new Room();
        string question = room.Press(KeyPress.Enter).After(60).Screen;
        Assert.Contains("Go on              the daily drill, 1:00 practised", room.Press(KeyPress.Esc, KeyPress.Esc).After(3600).Screen);
        Assert.Equal(question, room.Press(KeyPress.Enter).Screen);
    }

    [Fact]
    public void Reading_help_is_no_thinking()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).After(2).Type("?").After(300).Press(KeyPress.Esc).After(3).Type("k");
        Assert.Equal(TimeSpan.FromSeconds(5), Assert.Single(room.Log.Attempts).Thinking);
        Assert.Contains("14:55 left", room.Screen);
    }

    [Fact]
    public void Time_in_another_window_is_no_thinking()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).After(2);
        room.Frame.Attend(false);
        room.After(300);
        room.Frame.Attend(true);
        room.After(3).Type("k");
        Assert.Equal(TimeSpan.FromSeconds(5), Assert.Single(room.Log.Attempts).Thinking);
    }

    [Fact]
    public void A_session_whose_time_is_over_ends_in_its_summary_when_taken_up()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).After(16 * 60).Type("k").Press(KeyPress.Esc, KeyPress.Esc, KeyPress.Enter, KeyPress.Enter);
        Assert.IsType<SummaryPage>(room.Frame.Front);
        Assert.IsType<TodayPage>(room.Press(KeyPress.Enter).Frame.Front);
    }

    [Fact]
    public void Another_session_ends_the_one_that_waits_and_keeps_its_answers()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("k").Press(KeyPress.Esc, KeyPress.Esc).Type("n").Press(KeyPress.Enter);
        Assert.Single(room.Log.ReadAll().OfType<SessionEnded>());
        Assert.Single(room.Log.Attempts);
        Assert.Contains("name that voicing", room.Screen);
    }

    [Theory]
    [InlineData("n", false, "name that voicing")]
    [InlineData("d", true, "First six: three strings clamped")]
    [InlineData("w", true, "weak shapes")]
    public void Another_session_asks_before_it_ends_the_one_that_waits(string key, bool needsEnter, string title)
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("k").After(118).Press(KeyPress.Esc, KeyPress.Esc);
        Room Another() => needsEnter ? room.Type(key).Press(KeyPress.Enter) : room.Type(key);
        Assert.Contains("A session waits: the daily drill, 1:58 practised.", Another().Screen);
        Assert.Contains($"end it, and start {title}", room.Screen);
        Assert.Contains("Go on              the daily drill, 1:58 practised", room.Press(KeyPress.Esc).Screen);
        Assert.Empty(room.Log.ReadAll().OfType<SessionEnded>());
        string again = Another().Type("g").Screen;
        Assert.Contains("the daily drill", again);
        Assert.Contains("1 answered", again);
        Assert.Empty(room.Log.ReadAll().OfType<SessionEnded>());
    }

    [Fact]
    public void The_quiz_offers_as_many_as_there_are_to_name()
    {
        using var room = new Room(isAudible: false);
        int offered = int.Parse(room.Screen.Split('\n').Single(line => line.Contains("Name that voicing", StringComparison.Ordinal)).Split("voicing")[1].Trim().Split(' ')[0]);
        Assert.InRange(offered, 1, QuizPlanner.UsualCount - 1);
        Assert.Contains($"{offered} to come", room.Type("n").Screen);
    }

    [Fact]
    public void What_the_first_screen_shows_is_what_it_starts()
    {
        using var room = new Room();
        _ = room.Screen;
        _ = room.Press(KeyPress.Down).Screen;
        Assert.Equal(2, room.Seeds);
    }

    [Fact]
    public void A_shape_is_shown_and_named_before_it_is_asked_otherwise()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter);
        PlayThrough(room);
        HashSet<ShapeKey> shown = [];
        foreach (Attempt attempt in room.Log.Attempts)
        {
            Assert.True(attempt.Item.Direction == Direction.SeeShapeSayShapeName || shown.Contains(attempt.Item.Shape), attempt.Item.ToString());
            shown.Add(attempt.Item.Shape);
        }
    }

    [Fact]
    public void An_untouched_board_is_no_answer()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter);
        for (int i = 0; i < 60 && room.Desk.Record.Log.ReadAll().OfType<Attempt>().All(attempt => attempt.Item.Direction != Direction.NamePlaceShape); i++)
        {
            int before = room.Log.Attempts.Count();
            if (room.Screen.Contains("from the nut 000000", StringComparison.Ordinal))
            {
                Assert.Equal(before, room.Press(KeyPress.Enter).Log.Attempts.Count());
            }

            GiveUp(room.After(8));
            room.Press(KeyPress.Enter);
        }
    }

    [Fact]
    public void An_answer_can_be_undone_and_its_grade_changed()
    {
        using var room = new Room();
        string question = room.Press(KeyPress.Enter).Screen;
        Assert.Equal(question, room.Type("ku").Screen);
        Assert.Contains("Grade: steady", room.Type("k").Press(KeyPress.Up, KeyPress.Up).Screen);
        Assert.Single(room.Log.ReadAll().OfType<AttemptWithdrawn>());
        Assert.Equal([Grade.Strained, Grade.Steady], room.Log.ReadAll().OfType<GradeOverruled>().Select(entry => entry.Grade));
    }

    [Fact]
    public void A_grade_goes_by_steps_to_either_end_and_digits_do_nothing()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("k");
        Assert.Contains("Grade: missed", room.Press(KeyPress.Down).Type("1234").Screen);
        Assert.Empty(room.Log.ReadAll().OfType<GradeOverruled>());
        Assert.Contains("Grade: instant", room.Press(KeyPress.Up, KeyPress.Up, KeyPress.Up, KeyPress.Up, KeyPress.Up).Screen);
        Assert.Equal(3, room.Log.ReadAll().OfType<GradeOverruled>().Count());
        Assert.Contains("Grade: steady", room.Press(KeyPress.Down).Screen);
    }

    [Fact]
    public void Further_tabs_go_through_all_names_that_fit()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("tds");
        Assert.Contains("Name: Dsus2_", room.Press(KeyPress.Tab).Screen);
        Assert.Contains("Name: Dsus4_", room.Press(KeyPress.Tab).Screen);
        Assert.Contains("Name: Dsus2_", room.Press(KeyPress.Tab).Screen);
        Assert.Contains("Name: Dsus_", room.Press(KeyPress.Backspace).Screen);
        Assert.Contains("Name: Dsus2_", room.Press(KeyPress.Tab).Screen);
    }

    // One key must not stand there with two meanings.
    [Fact]
    public void While_a_name_is_typed_in_place_of_a_choice_Esc_leads_back_to_the_choices()
    {
        using var room = new Room();
        string keys = room.Press(KeyPress.Enter).Type("t").Screen.Split('\n')[^2] + room.Screen.Split('\n')[^1];
        Assert.Contains("Esc choices", keys);
        Assert.DoesNotContain("Esc pause", keys);
        Assert.Contains("t type a name", room.Press(KeyPress.Esc).Screen);
    }

    [Fact]
    public void After_the_last_hint_no_more_is_offered_and_asking_says_so()
    {
        using var room = new Room();
        Assert.Contains("h hint", room.Press(KeyPress.Enter).Type("hh").Screen);
        Assert.DoesNotContain("h hint", room.Type("h").Screen);
        Assert.Contains("there are no more hints", room.Type("h").Screen);
    }

    [Fact]
    public void Without_sound_nothing_to_hear_is_offered_and_asking_says_so()
    {
        using var room = new Room(isAudible: false);
        Assert.Contains("There is no sound.", room.Press(KeyPress.Enter).Type("r").Screen);
        Assert.DoesNotContain("r again", room.Type("k").Screen);
        Assert.DoesNotContain("string by string", room.Screen);
        Assert.Contains("There is no sound.", room.Type("r").Screen);
        Assert.DoesNotContain("There is no sound.", room.Type("u").Screen);
        Assert.Contains("There is no sound.", room.Type("kd").Screen);
        using var loud = new Room();
        Assert.Contains("There is nothing to hear in this question.", loud.Press(KeyPress.Enter).Type("g").Screen);
        Assert.Contains("r again", loud.Type("k").Screen);
    }

    [Fact]
    public void A_name_can_be_typed_with_small_letters_and_completed()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("t");
        Assert.True(room.Frame.Front.IsTyping);
        room.Type("dsu").Press(KeyPress.Tab);
        Assert.Contains("Name: Dsus2_", room.Screen);
        room.Press(KeyPress.Backspace).Type("4").Press(KeyPress.Enter);
        Assert.Equal("Dsus4", Assert.Single(room.Log.Attempts).Answer);
    }

    [Theory]
    [InlineData("cm", "Cm7")]
    [InlineData("cma", "Cmaj7")]
    [InlineData("cM", "CM")]
    [InlineData("f#su", "F#sus2")]
    public void Completion_keeps_major_and_minor_apart(string typed, string completed)
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("t").Type(typed).Press(KeyPress.Tab);
        Assert.Contains($"Name: {completed}_", room.Screen);
    }

    [Fact]
    public void A_name_that_does_not_read_costs_nothing()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).Type("td9x9").Press(KeyPress.Enter);
        Assert.Empty(room.Log.Attempts);
        Assert.Contains("expected", room.Screen);
    }

    [Fact]
    public void Without_sound_nothing_to_hear_is_asked_and_one_line_says_why()
    {
        using var room = new Room(isAudible: false);
        Assert.Contains("no sound here", room.Screen);
        room.Press(KeyPress.Enter);
        PlayThrough(room);
        Assert.NotEmpty(room.Log.Attempts);
        Assert.DoesNotContain(room.Log.Attempts, attempt => attempt.Item.Direction.NeedsSound());
    }

    [Fact]
    public void A_whole_session_asks_in_many_directions_and_ends_in_time()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter);
        PlayThrough(room);
        Assert.IsType<SummaryPage>(room.Frame.Front);
        SessionEnded end = Assert.Single(room.Log.ReadAll().OfType<SessionEnded>());
        Assert.InRange(end.Practised, TimeSpan.FromMinutes(3), TimeSpan.FromMinutes(16));
        Assert.True(room.Log.Attempts.Select(attempt => attempt.Item.Direction).Distinct().Count() >= 3);
        Assert.True(((CapturedOut)room.Sound).Played.Count >= room.Log.Attempts.Count());
        Golden.Check("summary-whole", room.Screen);
        Assert.IsType<TodayPage>(room.Press(KeyPress.Enter).Frame.Front);
    }

    [Fact]
    public void The_quiz_and_the_weak_shapes_are_there()
    {
        using var room = new Room();
        Assert.Contains("Nothing is weak just now.", room.Type("w").Screen);
        room.Press(KeyPress.Esc).Type("n");
        Assert.Contains("name that voicing", room.Screen);
        for (int i = 0; i < QuizPlanner.UsualCount && room.Frame.Front is SessionPage; i++)
        {
            GiveUp(room.After(5));
            room.Press(KeyPress.Enter);
        }

        Assert.IsType<SummaryPage>(room.Frame.Front);
        Assert.All(room.Log.Attempts, attempt => Assert.Contains(attempt.Item.Direction, Directions.Naming));
        room.Press(KeyPress.Enter).Type("w");
        Assert.Contains("weak shapes", room.Press(KeyPress.Enter).Screen);
        Assert.IsType<SessionPage>(room.Frame.Front);
    }

    // Don't know, in whichever way the page takes it now.
    private static void GiveUp(Room room) => room.Press(room.Frame.Front.IsTyping ? KeyPress.F(7) : KeyPress.Of('k'));

    private static void PlayThrough(Room room)
    {
        for (int i = 0; i < 300 && room.Frame.Front is SessionPage page; i++)
        {
            if (page.IsTyping || i % 3 == 0)
            {
                GiveUp(room.After(12));
            }
            else
            {
                room.After(12).Type("2").Press(KeyPress.Enter);
            }

            if (room.Frame.Front is SessionPage)
            {
                room.Press(KeyPress.Enter);
            }
        }
    }

    // Five seconds of thought, then eight of typing: only the thought is thinking.
    [Fact]
    public void Time_spent_typing_a_name_is_no_thinking()
    {
        using var room = new Room();
        room.Press(KeyPress.Enter).After(5).Type("t").After(4).Type("D").After(4).Press(KeyPress.Enter);
        Attempt attempt = Assert.Single(room.Log.Attempts);
        Assert.Equal(5.0, attempt.Thinking.TotalSeconds, precision: 1);
    }
}
