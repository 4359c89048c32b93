namespace Clampwise.Practice.Tests;

public class ProgressTests
{
    private static readonly PracticeItem s_one = Examples.Item(Examples.Quay, 0, Direction.SeeShapeSayShapeName);
    private static readonly PracticeItem s_other = Examples.Item(Examples.Lantern, 5, Direction.HearSayName);
    private static readonly SessionId s_session = new(new Guid(5, 0, 0, new byte[8]));

    // Today is Monday, 2 March 2026; the days before it lie in the week of 23 February.
    private static readonly LogEntry[] s_log =
    [
        Named(Examples.Attempt(s_one, Grade.Steady, 6), "G", "G"),
        Named(Examples.Attempt(s_one, Grade.Missed, 4), "G", "C") with { Foreseen = 0.9 },
        Named(Examples.Attempt(s_one, Grade.Missed, 3), "G", "C") with { Foreseen = 0.8 },
        Named(Examples.Attempt(s_other, Grade.Missed, 3, 40), "B", "") with { DidNotKnow = true, Thinking = TimeSpan.Zero },
        Named(Examples.Attempt(s_one, Grade.Steady, 0), "G", "G") with { Foreseen = 0.7, Session = s_session },
        new SessionEnded(new EntryId(new Guid(1, 2, 3, new byte[8])), Examples.Evening, s_session, SessionKind.Daily, Examples.Today, TimeSpan.FromMinutes(9), true),
        new SessionEnded(new EntryId(new Guid(1, 2, 4, new byte[8])), Examples.Evening, s_session, SessionKind.Daily, Examples.Today, TimeSpan.FromMinutes(15), false),
    ];

    private static ProgressReport Report() => ProgressReport.Of(s_log, MemoryState.Rebuild(s_log, FsrsSettings.Usual), Examples.Today);

    private static Attempt Named(Attempt attempt, string expected, string answer) =>
        attempt with { Expected = expected, Answer = answer, Setup = attempt.Drill.ToString() == "quay" ? "standard + 2-4@2" : "standard + 1-5@2" };

    [Fact]
    public void Weeks_start_on_monday_and_tell_recall_from_first_sight()
    {
        ProgressReport report = Report();
        Assert.Equal(["2026-02-23", "2026-03-02"], report.Weeks.Select(week => week.Monday.ToString()));
        WeekFigures first = report.Weeks[0];
        Assert.Equal((4, 1, 3), (first.Asked, first.RightAnswers, first.Days));
        Assert.Equal(0, first.Recall);
        Assert.Equal(0.85, first.Foreseen!.Value, 10);
        Assert.Equal(1, report.Weeks[1].Recall);
    }

    [Fact]
    public void A_session_taken_up_again_counts_once_and_a_killed_one_by_its_gaps()
    {
        ProgressReport report = Report();
        Assert.Equal(TimeSpan.FromMinutes(15), report.Days[^1].Practised);
        // All attempts before today share one session without an end: 5 s for the first, at most 2 minutes for a gap of days, 40 s.
        Assert.Equal(TimeSpan.FromSeconds(5 + 120 + 120 + 40), report.Days.Take(3).Aggregate(TimeSpan.Zero, (sum, day) => sum + day.Practised));
    }

    [Fact]
    public void Confusions_stand_by_name()
    {
        ConfusionMatrix matrix = Report().Confusions;
        int right = matrix.Names.IndexOf("G");
        Assert.Equal((2, 2, 0), (matrix[right, matrix.Names.IndexOf("C")], matrix[right, right], matrix.NotKnown(right)));
        Assert.Equal(1, matrix.NotKnown(matrix.Names.IndexOf("B")));
    }

    [Fact]
    public void Groups_by_setup_and_direction()
    {
        ProgressReport report = Report();
        Assert.Equal([("standard + 2-4@2", 4, 2), ("standard + 1-5@2", 1, 0)], report.BySetup.Select(group => (group.Name, group.Asked, group.RightAnswers)));
        Assert.Equal(["see a shape, say its shape name", "hear a voicing, name it"], report.ByDirection.Select(group => group.Name));
        Assert.Equal(1, report.ByDirection[1].Due);
        Assert.Null(report.ByDirection[1].UsualTime);
        Assert.Equal(TimeSpan.FromSeconds(4), report.ByDirection[0].UsualTime);
    }

    [Fact]
    public void What_comes_due_adds_up_to_all_items()
    {
        ProgressReport report = ProgressReport.Of(s_log, MemoryState.Rebuild(s_log, FsrsSettings.Usual), Examples.Today, 40000);
        Assert.Equal(2, report.Due.Sum(day => day.Count));
        Assert.Equal(1, report.Due[0].Count);
        Assert.Equal(Examples.Today, report.Due[0].Day);
    }

    [Fact]
    public void Recalled_counts_the_first_answer_of_a_later_day_alone()
    {
        Attempt[] attempts =
        [
            Examples.Attempt(s_one, Grade.Steady, 9), Examples.Attempt(s_one, Grade.Missed, 9, 1),
            Examples.Attempt(s_one, Grade.Missed, 8), Examples.Attempt(s_one, Grade.Steady, 8, 1), Examples.Attempt(s_one, Grade.Steady, 8, 2),
        ];
        ProgressReport report = ProgressReport.Of(attempts, Examples.Remembered(attempts), Examples.Today);
        Assert.Equal(0, report.Weeks[0].Recall);
        Assert.Equal(new StillHad(0, 1), report.StillHad);
    }

    [Fact]
    public void Still_had_leaves_out_choices_and_luck_and_counts_help_as_not_had()
    {
        PracticeItem compared = Examples.Item(Examples.Quay, 0, Direction.HearTwoCompare);
        Attempt[] attempts =
        [
            .. new[] { 9, 8, 7, 6, 5 }.Select(day => Examples.Attempt(s_one, day == 6 ? Grade.Missed : Grade.Steady, day) with { Choices = day == 8 ? 4 : 0, Hints = day == 5 ? 1 : 0 }),
            Examples.Attempt(compared, Grade.Steady, 9), Examples.Attempt(compared, Grade.Steady, 8),
        ];
        Assert.Equal(new StillHad(1, 3), ProgressReport.Of(attempts, Examples.Remembered(attempts), Examples.Today).StillHad);
    }

    [Fact]
    public void Empty_weeks_stand_as_gaps()
    {
        Attempt[] attempts = [Examples.Attempt(s_one, Grade.Steady, 28), Examples.Attempt(s_one, Grade.Steady, 7)];
        ProgressReport report = ProgressReport.Of(attempts, Examples.Remembered(attempts), Examples.Today);
        Assert.Equal([1, 0, 0, 1, 0], report.Weeks.Select(week => week.Days));
        Assert.Equal([null, null, null, 1.0, null], report.Weeks.Select(week => week.Recall));
    }

    [Fact]
    public void Confusions_stand_by_shape_for_each_asking()
    {
        ShapeKey other = s_other.Key.Shape;
        Attempt[] attempts = [Examples.Attempt(s_one, Grade.Steady, 5), Examples.Attempt(s_one, Grade.Missed, 4) with { ConfusedWith = other }, Examples.Attempt(s_one, Grade.Missed, 3)];
        ConfusedShapes pair = Assert.Single(ProgressReport.Of(attempts, Examples.Remembered(attempts), Examples.Today).ByShape);
        Assert.Equal(new ConfusedShapes(s_one.Key.Shape, other, 1, 3), pair);
    }

    [Fact]
    public void The_map_says_of_each_shape_of_a_drill_begun_what_is_known()
    {
        PracticeItem placed = Examples.Item(Examples.Quay, 0, Direction.NamePlaceShape);
        MemoryState memory = Examples.Remembered(
        [
            .. new[] { 9, 7, 5 }.Select(day => Examples.Attempt(s_one, Grade.Steady, day)),
            Examples.Attempt(placed, Grade.Steady, 5, 1),
        ]);
        System.Collections.Immutable.ImmutableArray<MappedShape> map = ShapeMap.Of(Examples.Harbour, memory);
        Assert.Equal(Examples.Quay.Voicings.Select(voicing => voicing.Key), map.Select(shape => shape.Shape.Key.Shape));
        Assert.Equal((Standing.Known, Standing.Unmet, Standing.Met, Standing.Unmet), (map[0].ShapeName, map[0].SoundingName, map[0].Place, map[0].Hear));
        Assert.All(map.Skip(1), shape => Assert.Equal(Standing.Unmet, shape.ShapeName));
    }

    [Fact]
    public void An_empty_log_has_an_empty_report()
    {
        ProgressReport report = ProgressReport.Of([], Examples.Nothing, Examples.Today);
        Assert.Equal((0, 0, TimeSpan.Zero), (report.Asked, report.RightAnswers, report.Practised));
        Assert.Empty(report.Confusions.Names);
    }
}
