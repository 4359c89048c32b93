using Clampwise.Fretboard;
using Clampwise.Practice;

namespace Clampwise.Tests.Plain;

public class PlainTalkTests
{
    [Fact]
    public void A_shape_that_is_drawn_is_said_string_by_string_without_its_pitches()
    {
        string said = PlainTalk.Of(Direction.SeeShapeSayShapeName, "setup", "end").Out;
        Assert.Contains("Setup standard + 3-5@2: a clamp at fret 2 over strings 3 to 5; strings 1, 2 and 6 free.", said);
        Assert.Contains("string 4 held by the clamp at fret 2, finger at fret 6\n", said);
        Assert.DoesNotContain("Open strings", said);
        Assert.DoesNotContain("G#3", said);
    }

    [Fact]
    public void Where_a_shape_is_placed_the_open_strings_are_said()
    {
        PlainTalk talk = PlainTalk.Of(Direction.NamePlaceShape, "005400", "differs", "say", "setup", "", "^ 0 0 3 2 0 0");
        Assert.Contains("Open strings, lowest first: E2 B2 E3 A3 B3 E4.", talk.Out);
        Assert.Contains("Not this time: it is D, you placed Dm.", talk.Out);
        Assert.Contains("Yours: shape name Dm, sounds Em, played ^ 0 0 3 2 0 0, from the nut 005400.", talk.Out);
        Assert.Contains("string 4: finger at fret 6, G#3, the third; yours: finger at fret 5, G3, the minor third", talk.Out);
        Assert.Contains("Note: String 4 at fret 6 is the major third.", talk.Out);
        Assert.Contains("Right: Dm.", talk.Out);
        Assert.Equal([false, true], talk.Log.Attempts.Select(attempt => attempt.IsCorrect));
    }

    [Fact]
    public void A_remark_that_lists_the_strings_is_not_said_twice()
    {
        string said = PlainTalk.Of(Direction.NamePlaceShape, "005400").Out;
        Assert.Contains("What you placed is Dm.\n", said);
        Assert.DoesNotContain("not G3", said);
    }

    [Fact]
    public void Shapes_to_pick_from_are_said_by_what_the_hand_does_not_by_their_names()
    {
        PlainTalk talk = PlainTalk.Of(Direction.HearPickShape, "end");
        string[] choices = [.. talk.Out.Split('\n').Where(line => line.Length > 2 && char.IsAsciiDigit(line[0]) && line[1..].StartsWith(": ", StringComparison.Ordinal))];
        Assert.Equal(4, choices.Length);
        Assert.All(choices, choice => Assert.Matches(@"^\d: \^ [x0-9= -]+, from the nut \S+: (string|every string)", choice));
        Assert.Contains(choices, choice => choice.EndsWith("^ 0 0 4 2 0 0, from the nut 006400: string 4 fret 6, string 3 fret 4, the rest ring", StringComparison.Ordinal));
        Assert.Single(talk.Sound.Played);
        Assert.DoesNotContain("\nShape ", talk.Out);
    }

    [Theory]
    [InlineData(Direction.SeeShapeSayShapeName, "Which chord is this, counted from the home clamp? Answer with a number or a name.")]
    [InlineData(Direction.NamePlaceShape, "Place D, counted from the home clamp. Answer with its frets, lowest string first.")]
    [InlineData(Direction.HearTwoCompare, "which strings moved? Answer same, or different and the strings.")]
    [InlineData(Direction.ShapeNameSaySoundingName, "How does it sound? Answer with a name.")]
    [InlineData(Direction.ChangeInTime, "count the clean changes. Answer with their number.")]
    public void A_question_says_how_to_answer_it(Direction direction, string words) =>
        Assert.Contains(words, PlainTalk.Of(direction).Out);

    [Fact]
    public void A_shape_can_be_picked_by_its_frets_too()
    {
        PlainTalk talk = PlainTalk.Of(Direction.HearPickShape, "111111", "006400");
        Assert.Contains("expected 1 to 4", talk.Out);
        Assert.True(talk.Log.Attempts.Single().IsCorrect);
    }

    [Theory]
    [InlineData("same")]
    [InlineData("The same")]
    [InlineData("different")]
    [InlineData("different 4")]
    [InlineData("Different, strings 3 and 4")]
    [InlineData("string 4")]
    [InlineData("4")]
    public void Two_voicings_are_compared_in_many_words(string line) =>
        Assert.Single(PlainTalk.Of(Direction.HearTwoCompare, line).Log.Attempts);

    [Theory]
    [InlineData("perhaps", "column 1: expected same, or different with the strings that moved (different 3), found 'perhaps'")]
    [InlineData("different 9", "column 11: there is no string 9")]
    public void What_is_no_comparison_costs_nothing(string line, string words)
    {
        PlainTalk talk = PlainTalk.Of(Direction.HearTwoCompare, line);
        Assert.Contains(words, talk.Out);
        Assert.Empty(talk.Log.Attempts);
    }

    [Fact]
    public void Sound_is_played_again_slower_and_string_by_string_at_no_cost()
    {
        PlainTalk talk = PlainTalk.Of(Direction.HearSayName, "again", "slower", "strings", "open", "D", "again", "slower", "strings", "differs");
        Assert.Equal(10, talk.Sound.Played.Count);
        Assert.True(talk.Sound.Played[2].End > talk.Sound.Played[1].End);
        Assert.Equal(0, talk.Log.Attempts.Single().Hints);
    }

    [Fact]
    public void Nothing_to_hear_is_said()
    {
        PlainTalk talk = PlainTalk.Of(Direction.SeeShapeSayShapeName, "slower");
        Assert.Contains("There is nothing to hear in this question.", talk.Out);
        Assert.Empty(talk.Sound.Played);
    }

    [Fact]
    public void The_clock_stands_while_the_session_is_paused()
    {
        PlainTalk talk = PlainTalk.OnTheClock(Direction.SeeShapeSayShapeName, "(10)", "pause", "(600)", "1", "", "clock", "(2)", "d", "pause", "(60)", "go on", "end");
        Assert.Contains("The clock stands at 0:10.", talk.Out);
        Assert.Contains("The clock stands: Enter goes on", talk.Out);
        Assert.Contains("0 answered, 14:50 left, 2 to come.", talk.Out);
        Assert.Contains("0:12 practised, ended early", talk.Out);
        Assert.Equal(TimeSpan.FromSeconds(12), talk.Log.Attempts.Single().Thinking);
    }

    [Fact]
    public void A_hint_says_what_it_shows_and_what_it_rules_out_and_is_said_again_with_the_question()
    {
        string placing = PlainTalk.Of(Direction.NamePlaceShape, "hint", "hint", "hint", "question").Out;
        Assert.Matches("Hint: One finger is shown\\. String \\d at fret \\d\\.", placing);
        Assert.Equal(2, placing.Split("One finger is shown.").Length - 1);
        Assert.Matches("Hint: Some of the choices are ruled out\\. Not \\d, not \\d\\.", PlainTalk.Of(Direction.HearPickShape, "hint", "hint", "hint", "hint").Out);
    }

    [Fact]
    public void An_answer_is_taken_back_and_its_grade_changed_by_word()
    {
        PlainTalk talk = PlainTalk.Of(Direction.SeeShapeSayShapeName, "undo", "steady", "Dm", "undo", "D", "instant", "Strained", "3", "grade 2", "end");
        Assert.Contains("An answer can be taken back only before the next question.", talk.Out);
        Assert.Contains("A grade belongs to an answer", talk.Out);
        Assert.Contains("Grade: instant.", talk.Out);
        Assert.Contains("Grade: strained.", talk.Out);
        LogEntry[] entries = [.. talk.Log.ReadAll()];
        Assert.Single(entries.OfType<AttemptWithdrawn>());
        // A number is no grade: a script that is one line ahead must not change what counts.
        Assert.Equal([Grade.Instant, Grade.Strained], entries.OfType<GradeOverruled>().Select(entry => entry.Grade));
        Assert.Equal(Grade.Strained, LogReading.Attempts(entries).Single().Grade);
    }

    [Theory]
    [InlineData("skip", SkipReason.NotNow)]
    [InlineData("skip hand", SkipReason.HandNeedsRest)]
    [InlineData("skip 3", SkipReason.NoInstrument)]
    [InlineData("Skip listen", SkipReason.CannotListen)]
    [InlineData("skip wrong", SkipReason.LooksWrong)]
    public void A_question_is_skipped_with_a_reason(string line, SkipReason reason)
    {
        PlainTalk talk = PlainTalk.Of(Direction.SeeShapeSayShapeName, line);
        Assert.Equal(reason, talk.Log.ReadAll().OfType<QuestionSkipped>().Single().Reason);
    }

    [Fact]
    public void A_skip_for_no_known_reason_lists_them()
    {
        PlainTalk talk = PlainTalk.Of(Direction.SeeShapeSayShapeName, "skip tea");
        Assert.Contains("column 6: expected one of skip now: not now; skip hand: my hand needs a rest", talk.Out);
        Assert.Empty(talk.Log.ReadAll().OfType<QuestionSkipped>());
    }

    [Fact]
    public void The_help_explains_every_grade()
    {
        string said = PlainTalk.Of(Direction.SeeShapeSayShapeName, "help").Out;
        Assert.All(Enum.GetNames<Grade>(), name => Assert.Contains($"\n{name.ToLowerInvariant()}: ", said));
    }

    [Theory]
    [InlineData("differs", "differs serves after an answer: it says how that differs from the right one.")]
    [InlineData("next", "next goes on after an answer. To put this question aside: skip.")]
    [InlineData("verdict", "verdict serves after an answer")]
    [InlineData("same", "same answers where two voicings are heard. Answer with a number or a name.")]
    [InlineData("go on", "The clock runs; go on serves after pause.")]
    public void A_word_at_the_wrong_time_is_told_when_it_serves(string line, string words)
    {
        PlainTalk talk = PlainTalk.Of(Direction.SeeShapeSayShapeName, line);
        Assert.Contains($"\n{words}", talk.Out);
        Assert.DoesNotContain("column", talk.Out);
        Assert.Empty(talk.Log.Attempts);
    }

    [Fact]
    public void Enter_at_an_open_question_says_it_again_in_short()
    {
        string said = PlainTalk.Of(Direction.SeeShapeSayShapeName, "").Out;
        Assert.Equal(2, said.Split("Which chord is this, counted from the home clamp? Answer with a number or a name.").Length - 1);
        Assert.Single(said.Split("Setup standard + 3-5@2:")[1..]);
        Assert.Matches("\n1: [^;\n]+; 2: [^;\n]+; 3: [^;\n]+; 4: ", said);
    }

    [Fact]
    public void What_is_put_aside_is_said() =>
        Assert.Contains("\nPut aside: my hand needs a rest.\n", PlainTalk.Of(Direction.SeeShapeSayShapeName, "skip hand").Out);

    [Fact]
    public void Where_nothing_was_answered_nothing_is_compared()
    {
        PlainTalk talk = PlainTalk.Of(Direction.SeeShapeSayShapeName, "?", "differs");
        Assert.Contains("\nThere was no answer to compare with the right one.\n", talk.Out);
        Assert.Single(talk.Sound.Played);
    }

    [Theory]
    [InlineData("1", "expected the frets of all 6 strings, lowest first: from the nut (000000), or after ^ from the home clamp (^ 0 0 0 0 0 0), x for a muted one; found '1'")]
    [InlineData("0054", "expected the frets of all 6 strings")]
    [InlineData("0054000", "column 7: expected 6 strings, lowest first, found 7")]
    [InlineData("00z400", "column 3: ")]
    public void A_shape_that_is_too_short_or_too_long_is_told_what_is_wanted(string line, string words)
    {
        PlainTalk talk = PlainTalk.Of(Direction.NamePlaceShape, line);
        Assert.Contains($"\n{words}", talk.Out);
        Assert.Empty(talk.Log.Attempts);
    }

    // Degrees of two roots are no comparison unless each names its chord.
    [Fact]
    public void Degrees_of_two_roots_bear_the_names_of_their_chords()
    {
        Setup standard = Setup.Parse("standard").Value;
        string[] differ = [.. Clampwise.Plain.VoicingText.Differences(Voicing.Parse(standard, "022100").Value, Voicing.Parse(standard, "320003").Value, "yours")];
        Assert.Contains(differ, line => line.Contains("E2, the root of E; yours: ", StringComparison.Ordinal) && line.EndsWith("G2, the root of G", StringComparison.Ordinal));
        Assert.DoesNotContain(Clampwise.Plain.VoicingText.Differences(Voicing.Parse(standard, "022100").Value, Voicing.Parse(standard, "022000").Value, "yours"), line => line.Contains(" of E", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_needs_no_shift() =>
        Assert.True(PlainTalk.Of(Direction.SeeShapeSayShapeName, "d").Log.Attempts.Single().IsCorrect);

    [Theory]
    [InlineData("standard + 3-5@2", "a clamp at fret 2 over strings 3 to 5; strings 1, 2 and 6 free.")]
    [InlineData("standard", "no clamp, every string free.")]
    [InlineData("standard + full@1 + 1-5@3", "a full capo at fret 1, a clamp at fret 3 over strings 1 to 5, the home clamp; no string free.")]
    [InlineData("standard + 1@2", "a clamp at fret 2 over string 1; strings 2 to 6 free.")]
    public void A_setup_is_said_with_its_clamps(string setup, string words) =>
        Assert.EndsWith(words, Clampwise.Application.SetupWords.Held(Setup.Parse(setup).Value), StringComparison.Ordinal);
}
