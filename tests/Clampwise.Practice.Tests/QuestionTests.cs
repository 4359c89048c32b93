using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice.Tests;

public class QuestionTests
{
    public static TheoryData<Direction> Every => [.. Directions.All];

    private static Question Ask(Drill drill, int voicing, Direction direction, int seed = 1, QuestionOptions? options = null) =>
        QuestionMaker.Make(Examples.Item(drill, voicing, direction), Examples.Context(seed: seed, options: options));

    private static Verdict Judge(Question question, Answer answer) => QuestionMaker.Judge(question, answer, Examples.Context()).Value;

    [Theory]
    [MemberData(nameof(Every))]
    public void The_right_answer_is_right_for_every_item_and_seed(Direction direction)
    {
        PracticeItem[] items = [.. Examples.Harbour.Items.Where(item => item.Key.Direction == direction)];
        Assert.NotEmpty(items);
        foreach (PracticeItem item in items)
        {
            for (int seed = 0; seed < 4; seed++)
            {
                Question question = QuestionMaker.Make(item, Examples.Context(seed: seed));
                Verdict verdict = Judge(question, Examples.Right(question));
                Assert.True(verdict.IsCorrect && !verdict.IsPartly, $"{item}: {verdict}");
                Assert.Null(verdict.ConfusedWith);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void Not_known_is_wrong_and_shows_what_was_right(Direction direction)
    {
        foreach (PracticeItem item in Examples.Harbour.Items.Where(item => item.Key.Direction == direction))
        {
            Verdict verdict = Judge(QuestionMaker.Make(item, Examples.Context()), new Answer.NotKnown());
            Assert.True(verdict is { IsCorrect: false, DidNotKnow: true, Given: "" });
            Assert.NotEmpty(verdict.Expected);
            Assert.Equal(item.Subject.Voicing, Assert.Single(verdict.ToPlay));
        }
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void An_answer_in_another_form_is_refused_and_costs_nothing(Direction direction)
    {
        Question question = QuestionMaker.Make(Examples.Harbour.Items.First(item => item.Key.Direction == direction), Examples.Context());
        Answer other = question.Form == AnswerForm.CountChanges ? new Answer.Name("A") : new Answer.Changes(3);
        Assert.StartsWith("this question wants", QuestionMaker.Judge(question, other, Examples.Context()).Fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_heard_shows_no_shape_and_what_is_seen_makes_no_sound()
    {
        foreach (PracticeItem item in Examples.Harbour.Items)
        {
            Question question = QuestionMaker.Make(item, Examples.Context());
            Assert.Equal(item.Key.Direction.NeedsSound(), question.Played.Length > 0);
            if (question.Form is AnswerForm.Name or AnswerForm.Place or AnswerForm.Compare && item.Key.Direction is not (Direction.SeeShapeSayShapeName or Direction.SeeShapeSaySoundingName))
            {
                Assert.Empty(question.Drawn);
            }
        }
    }

    // x 0 4 4 4 0 with strings 1 to 5 held at 2 is an A by its shape and a B by its sound (worked by hand: B2 F#3 B3 D#4 F#4).
    [Theory]
    [InlineData(Direction.SeeShapeSayShapeName, "A", true, null)]
    [InlineData(Direction.SeeShapeSayShapeName, "B", false, "That is how it sounds; counted from the home clamp it is A.")]
    [InlineData(Direction.SeeShapeSaySoundingName, "B", true, null)]
    [InlineData(Direction.SeeShapeSaySoundingName, "Cb", true, "Right; written B as a rule.")]
    [InlineData(Direction.SeeShapeSaySoundingName, "A", false, "That is the shape's name; it sounds as B.")]
    [InlineData(Direction.HearSayName, "B", true, null)]
    [InlineData(Direction.HearSayName, "A", true, "Right by its shape; at concert pitch it is B.")]
    [InlineData(Direction.HearSayName, "Bm", false, "String 2: D#4 (the third), not D4 (the minor third)")]
    [InlineData(Direction.ShapeNameSaySoundingName, "B", true, null)]
    [InlineData(Direction.ShapeNameSaySoundingName, "A", false, "That is the shape's name; it sounds as B.")]
    [InlineData(Direction.ShapeNameSaySoundingName, "C", false, "The home clamp is at fret 2: a shape sounds 2 semitones above its name.")]
    [InlineData(Direction.SoundingNameSayShapeName, "A", true, null)]
    public void Names(Direction direction, string answer, bool isRight, string? remark)
    {
        Verdict verdict = Judge(Ask(Examples.Lantern, 5, direction), new Answer.Name(answer));
        Assert.Equal((isRight, remark), (verdict.IsCorrect, verdict.Remark ?? verdict.WhatDiffers));
    }

    [Fact]
    public void Another_reading_is_right_with_a_note()
    {
        // B F# B C# F#: sus2 on B is sus4 on F# over B.
        Verdict verdict = Judge(Ask(Examples.Lantern, 6, Direction.SeeShapeSaySoundingName), new Answer.Name("F#sus4/B"));
        Assert.True(verdict.IsCorrect && !verdict.IsPartly);
        Assert.Equal("Right, it reads so too; the first reading is Bsus2.", verdict.Remark);
    }

    [Fact]
    public void A_name_without_its_bass_is_right_in_part()
    {
        Verdict verdict = Judge(Ask(Examples.Lantern, 0, Direction.SeeShapeSayShapeName), new Answer.Name("Am"));
        Assert.True(verdict.IsCorrect && verdict.IsPartly);
        Assert.Equal("Right but for the bass: it is Am/D.", verdict.Remark);
    }

    // D is a tone of Am/D as it sounds, C of the Am that is named; F# is in neither.
    [Theory]
    [InlineData(0, "Am", true)]
    [InlineData(0, "Am/C", true)]
    [InlineData(0, "Am/F#", false)]
    [InlineData(5, "A/E", true)]
    [InlineData(5, "A/F#", false)]
    public void A_wrong_bass_is_forgiven_in_part_only_if_it_sounds_or_belongs_to_the_chord(int voicing, string answer, bool isRight)
    {
        Verdict verdict = Judge(Ask(Examples.Lantern, voicing, Direction.SeeShapeSayShapeName), new Answer.Name(answer));
        Assert.Equal((isRight, isRight), (verdict.IsCorrect, verdict.IsPartly));
    }

    [Fact]
    public void A_wrong_name_is_shown_as_the_shape_it_belongs_to_with_the_string_that_differs()
    {
        Verdict verdict = Judge(Ask(Examples.Lantern, 5, Direction.SeeShapeSayShapeName), new Answer.Name("Am"));
        Assert.Equal("x04430", verdict.Answered!.Fretting.ToString());
        Assert.Equal("2", verdict.Differing.ToString());
        Assert.Equal(Examples.Lantern.Voicings[7].Key, verdict.ConfusedWith);
        Assert.True(verdict.ToPlay is [var first, var second] && first.Equals(verdict.Answered) && second.Equals(verdict.RightVoicing));
    }

    [Fact]
    public void Where_the_roots_differ_only_pitches_are_compared()
    {
        Setup standard = Setup.Parse("standard").Value;
        string Differ(string right, string answered) => StringChanges.InWords(Voicing.Parse(standard, right).Value, Voicing.Parse(standard, answered).Value);
        Assert.Equal("string 6: E2, not G2; string 4: E3, not D3; string 3: G#3, not G3; string 1: E4, not G4", Differ("022100", "320003"));
        Assert.Equal("string 3: G#3 (the third), not G3 (the minor third)", Differ("022100", "022000"));
    }

    [Theory]
    [InlineData("xyz", "column 1: expected a chord name, which begins with a letter A to G in either case, such as D, f#m or Bb7; found 'xyz'")]
    [InlineData("  h7", "column 3: expected a chord name, which begins with a letter A to G in either case, such as D, f#m or Bb7; found 'h7'")]
    [InlineData("am9x", null)]
    [InlineData("", "column 1: expected a chord name, which begins with a letter A to G in either case, such as D, f#m or Bb7; found ''")]
    public void A_root_is_read_in_either_case(string answer, string? words)
    {
        Question question = Ask(Examples.Lantern, 5, Direction.SeeShapeSayShapeName);
        Assert.True(Judge(question, new Answer.Name(" a")).IsCorrect);
        Assert.False(QuestionMaker.Judge(question, new Answer.Name(answer), Examples.Context()).TryGet(out _, out Fault? fault));
        Assert.True(words is null ? fault.Column == 4 : words == fault.ToString(), fault.ToString());
    }

    [Theory]
    [InlineData(Direction.SeeShapeSayShapeName, 1, "Its tones from the lowest, counted from the clamp: A, E, C#.")]
    [InlineData(Direction.NamePlaceShape, 0, "Its tones from the lowest, counted from the clamp: A, E, C#.")]
    [InlineData(Direction.SeeShapeSaySoundingName, 1, "Its tones from the lowest: B, F#, D#.")]
    public void Tones_that_are_counted_from_the_clamp_say_so(Direction direction, int hint, string words) =>
        Assert.Equal(words, Ask(Examples.Lantern, 5, direction).Hints[hint].Words);

    [Fact]
    public void A_wrong_name_that_no_drill_has_is_worked_out()
    {
        // The A shape with its middle string let down a semitone reads Amaj7: no drill of these has it.
        Verdict verdict = Judge(Ask(Examples.Lantern, 5, Direction.SeeShapeSayShapeName), new Answer.Name("Amaj7"));
        Assert.Equal("x04340", verdict.Answered!.Fretting.ToString());
        Assert.Equal("3", verdict.Differing.ToString());
        Assert.Null(verdict.ConfusedWith);
    }

    [Fact]
    public void Any_playable_voicing_of_the_name_is_right_and_the_drills_own_is_shown()
    {
        Question question = Ask(Examples.Lantern, 5, Direction.NamePlaceShape);
        Assert.Equal("A", question.Given);
        Fretting other = Fretting.Parse("^ x 0 2 2 2 5", question.Setup).Value;
        Verdict verdict = Judge(question, new Answer.Placed(other));
        Assert.True(verdict.IsCorrect && !verdict.IsPartly);
        Assert.Equal("Right; the drill plays it as ^ x 0 2 2 2 0.", verdict.Remark);
        Assert.Equal(2, verdict.ToPlay.Length);
    }

    [Theory]
    [InlineData("^ x 0 2 2 1 0", "What you placed is Am.", "String 2: D#4 (the third), not D4 (the minor third)")]
    [InlineData("^ x 0 2 2 0 0", "What you placed is Asus2.", "String 2: D#4 (the third), not C#4 (the second)")]
    public void A_wrong_placing_says_what_it_was(string placed, string remark, string differs)
    {
        Question question = Ask(Examples.Lantern, 5, Direction.NamePlaceShape);
        Verdict verdict = Judge(question, new Answer.Placed(Fretting.Parse(placed, question.Setup).Value));
        Assert.Equal((false, remark, differs), (verdict.IsCorrect, verdict.Remark, verdict.WhatDiffers));
        Assert.Equal("2", verdict.Differing.ToString());
        Assert.NotNull(verdict.ConfusedWith);
    }

    [Theory]
    [InlineData("x x x x x x", "nothing sounds yet")]
    [InlineData("x 0 2 4 4 0", "string 4 is held by the clamp at 2")]
    [InlineData("x 9 4 4 4 0", "the name fits, but")]
    public void A_placing_that_cannot_be_played_costs_nothing(string placed, string fault)
    {
        Question question = Ask(Examples.Lantern, 5, Direction.NamePlaceShape);
        Fretting fretting = Fretting.Parse(placed, question.Setup).Value;
        Result<Verdict> result = QuestionMaker.Judge(question, new Answer.Placed(fretting), Examples.Context());
        Assert.StartsWith(fault, result.Fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Choices_hold_the_right_one_once_and_nothing_else_that_would_be_right()
    {
        var options = new QuestionOptions(OffersNames: true);
        foreach (PracticeItem item in Examples.Harbour.Items.Where(item => Directions.Naming.Contains(item.Key.Direction) || item.Key.Direction == Direction.HearPickShape))
        {
            Question question = QuestionMaker.Make(item, Examples.Context(options: options));
            Assert.Equal(4, question.Choices.Length);
            Assert.Equal(0.25, question.GuessChance);
            int right = Enumerable.Range(0, 4).Count(index => Judge(question, new Answer.Chosen(index)).IsCorrect);
            Assert.Equal(1, right);
        }
    }

    // x 0 4 4 0 0 with strings 3 to 5 held at 2: B2 F#3 B3 B3 E4, a Bsus4 (A2 E3 A3 A3 D4 from home). All held at 2 it is
    // B2 F#3 B3 C#4 F#4, the Asus2 that every guitarist knows. Worked by hand.
    [Theory]
    [InlineData(Direction.SeeShapeSayShapeName, "x04400", "Asus4", "Asus2", "strings 1 and 2 ring from the nut, two frets lower, and are the fourth and the root here")]
    [InlineData(Direction.SeeShapeSaySoundingName, "x04400", "Bsus4", "Bsus2", "strings 1 and 2 ring from the nut, two frets lower, and are the fourth and the root here")]
    [InlineData(Direction.SeeShapeSayShapeName, "x04440", "Aadd4", "A", "string 1 rings from the nut, two frets lower, and is the fourth here")]
    public void What_the_hand_would_be_under_a_full_capo_is_told(Direction direction, string fretting, string right, string trap, string why)
    {
        Drill drill = Examples.Drill("trap", "standard + 3-5@2", fretting, "x00000", "x04000");
        var repertoire = Repertoire.Of([drill]);
        var context = new AskContext(repertoire, Examples.Nothing, Examples.Today, QuestionOptions.Usual, new Random(1));
        Question question = QuestionMaker.Make(repertoire.Find(new ItemKey(drill.Voicings[0].Key, direction))!, context);
        Verdict verdict = QuestionMaker.Judge(question, new Answer.Name(trap), context).Value;
        Assert.Equal(right, verdict.Expected);
        Assert.Equal($"Under a full capo at 2 this hand would be {trap}; {why}.", verdict.Remark);
        Assert.False(verdict.IsCorrect);
    }

    [Fact]
    public void A_drill_of_one_voicing_still_has_choices_and_comparisons()
    {
        var alone = Repertoire.Of([Examples.Drill("alone", "standard + 2-4@2", "x00000")]);
        foreach (PracticeItem item in alone.Items.Where(item => item.Key.Direction.NeedsSound()))
        {
            for (int seed = 0; seed < 8; seed++)
            {
                var context = new AskContext(alone, Examples.Nothing, Examples.Today, QuestionOptions.Usual, new Random(seed));
                Question question = QuestionMaker.Make(item, context);
                Assert.True(item.Key.Direction != Direction.HearPickShape || question.Choices.Length == 4);
                Assert.True(QuestionMaker.Judge(question, Examples.Right(question), context).Value.IsCorrect);
            }
        }
    }

    [Fact]
    public void Comparing_asks_same_and_different_and_names_what_moved()
    {
        Question[] questions = [.. Enumerable.Range(0, 40).Select(seed => Ask(Examples.Lantern, 5, Direction.HearTwoCompare, seed))];
        Assert.InRange(questions.Count(question => question.Partner!.Voicing.Equals(question.Subject)), 8, 32);
        Question different = questions.First(question => !question.Partner!.Voicing.Equals(question.Subject));
        StringSet moved = different.Subject.SoundsOtherwise(different.Partner!.Voicing);
        Assert.InRange(moved.Count, 1, 2);
        Assert.False(Judge(different, new Answer.Compared(true, default)).IsCorrect);
        Assert.Equal(different.Partner.Key, Judge(different, new Answer.Compared(true, default)).ConfusedWith);
        Verdict partly = Judge(different, new Answer.Compared(false, default));
        Assert.True(partly.IsCorrect && partly.IsPartly);
        Verdict whole = Judge(different, new Answer.Compared(false, moved));
        Assert.True(whole.IsCorrect && !whole.IsPartly);
        Assert.Equal($"different: string {moved}", whole.Expected);
    }

    [Fact]
    public void A_string_that_did_not_move_makes_a_comparison_wrong_and_some_that_did_make_it_right_in_part()
    {
        // x 0 4 4 4 0 against x 0 4 4 6 5: strings 2 and 1 move, the others stay.
        Question asked = Ask(Examples.Lantern, 5, Direction.HearTwoCompare);
        Question question = asked with { Partner = new DrillVoicing(Voicing.Parse(asked.Setup, "x04465").Value) };
        (bool, bool) Of(string strings) =>
            Judge(question, new Answer.Compared(false, StringSet.Parse(strings, 6).Value)) is var verdict ? (verdict.IsCorrect, verdict.IsPartly) : default;
        Assert.Equal((true, false), Of("1-2"));
        Assert.Equal((true, true), Of("2"));
        Assert.Equal((false, false), Of("3"));
        Assert.Equal((false, false), Of("1-3"));
        Assert.Null(Judge(question, new Answer.Compared(false, StringSet.Parse("3", 6).Value)).ConfusedWith);
    }

    [Theory]
    [InlineData(29, false, Grade.Missed)]
    [InlineData(30, true, Grade.Strained)]
    [InlineData(45, true, Grade.Steady)]
    [InlineData(60, true, Grade.Instant)]
    public void Changes_in_a_minute(int count, bool isRight, Grade grade)
    {
        Verdict verdict = Judge(Ask(Examples.Lantern, 5, Direction.ChangeInTime), new Answer.Changes(count));
        Assert.Equal((isRight, count), (verdict.IsCorrect, verdict.ChangesPerMinute));
        Assert.Equal(grade, ChangePace.GradeOf(count, isFirstSight: false));
    }

    [Fact]
    public void Hints_are_true()
    {
        Question question = Ask(Examples.Lantern, 5, Direction.SeeShapeSayShapeName);
        Assert.Equal(
            ["Its root is A.", "Its tones from the lowest, counted from the clamp: A, E, C#.", "It is a plain major chord."],
            question.Hints.Select(hint => hint.Words));
        Question place = Ask(Examples.Lantern, 5, Direction.NamePlaceShape);
        Assert.Equal("1,5-6", place.Hints[1].Shown.ToString());
        Assert.Equal("1,4-6", place.Hints[2].Shown.ToString());
        Question pick = Ask(Examples.Lantern, 5, Direction.HearPickShape);
        Assert.All(pick.Hints[^1].RuledOut, index => Assert.NotEqual(pick.Subject, pick.Choices[index].Voicing));
    }

    [Fact]
    public void The_hints_of_a_comparison_are_worded_alike_and_true()
    {
        foreach (Question question in Enumerable.Range(0, 30).Select(seed => Ask(Examples.Lantern, 5, Direction.HearTwoCompare, seed)))
        {
            string words = question.Hints[1].Words;
            Assert.Matches("^Listen to strings [1-6][-,][1-6]: if anything moved, one of them did.$", words);
            StringSet named = StringSet.Parse(words.Split(' ')[3].TrimEnd(':'), 6).Value;
            StringSet moved = question.Subject.SoundsOtherwise(question.Partner!.Voicing);
            Assert.True(moved.Count == 0 || named.Intersect(moved).Count > 0);
        }
    }

    [Fact]
    public void The_hints_of_a_change_name_what_stays_and_the_fingers()
    {
        Drill pair = Examples.Drill("pair", "standard + 1-5@2", "x04440", "x04430");
        var repertoire = Repertoire.Of([pair]);
        var context = new AskContext(repertoire, Examples.Nothing, Examples.Today, QuestionOptions.Usual, new Random(1));
        Question question = QuestionMaker.Make(repertoire.Find(new ItemKey(pair.Voicings[0].Key, Direction.ChangeInTime))!, context);
        Assert.Equal(2, question.Hints.Length);
        Assert.Matches("stays|leave together", question.Hints[0].Words);
        Assert.Contains("fret 4", question.Hints[1].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_alone_are_asked_once_for_each_name_and_only_with_a_clamp()
    {
        var open = Repertoire.Of([Examples.Drill("open", "standard", "x02220", "x02210")]);
        Assert.DoesNotContain(open.Items, item => item.Key.Direction.IsNamesOnly());
        var two = Repertoire.Of([Examples.Drill("two", "standard + 1-5@2", "x04440", "x 0 4 4 4 7")]);
        Assert.Single(two.Items, item => item.Key.Direction == Direction.ShapeNameSaySoundingName);
        Assert.Equal(2, two.Items.Count(item => item.Key.Direction == Direction.SeeShapeSayShapeName));
    }
}
