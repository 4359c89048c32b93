using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Sound;
using Clampwise.Sound.Players;
using Clampwise.Theory;

namespace Clampwise.Application.Tests;

public class DeskTests
{
    [Fact]
    public void A_session_that_was_put_down_is_there_at_the_next_start_of_the_same_day_and_no_later()
    {
        using var bench = new Bench();
        Desk desk = bench.Open();
        var view = new View();
        var run = new SessionRun(desk, desk.Sessions.Start(DailyPlanner.Plan(desk.Request())), view);
        Begin(run, desk);
        run.Happen(new SessionEvent.Answered(desk.Stamp(), new Answer.NotKnown(), TimeSpan.Zero));
        run.Leave();
        Assert.NotNull(desk.Sessions.Waiting);
        Assert.Null(desk.Sessions.Close());

        Desk next = bench.Open();
        next.Sessions.TakeUpKept();
        Assert.Equal(run.State.Id, next.Sessions.Waiting!.Id);
        bench.Time.Advance(TimeSpan.FromDays(1));
        Desk later = bench.Open();
        later.Sessions.TakeUpKept();
        Assert.Null(later.Sessions.Waiting);
    }

    [Fact]
    public void An_answer_that_cannot_be_kept_is_said_and_counted_as_lost()
    {
        using var bench = new Bench();
        Desk desk = bench.Open();
        var view = new View();
        var run = new SessionRun(desk, desk.Sessions.Start(DailyPlanner.Plan(desk.Request())), view);
        Begin(run, desk);
        bench.Log.Refusal = new Fault("no room left");
        run.Happen(new SessionEvent.Answered(desk.Stamp(), new Answer.NotKnown(), TimeSpan.Zero));
        Assert.True(run.HasLost);
        Assert.Contains("no room left", view.Said);
    }

    [Fact]
    public void The_end_of_a_session_that_another_takes_the_place_of_is_missed_at_the_close_if_it_could_not_be_kept()
    {
        using var bench = new Bench();
        Desk desk = bench.Open();
        var run = new SessionRun(desk, desk.Sessions.Start(DailyPlanner.Plan(desk.Request())), new View());
        run.Begin();
        run.Leave();
        bench.Log.Refusal = new Fault("no room left");
        _ = desk.Sessions.Start(DailyPlanner.Plan(desk.Request()));
        bench.Log.Refusal = null;
        Assert.Equal("no room left", desk.Sessions.Close()!.Message);
    }

    [Fact]
    public void A_kept_voicing_stands_in_a_drill_of_its_setup_and_is_there_at_the_next_start()
    {
        using var bench = new Bench();
        Voicing voicing = Voicing.Parse(Setup.Parse("standard + 2-4@2").Value, "x 0 4 4 0 0").Value;
        Desk desk = bench.Open();
        int before = desk.Shelf.Drills.Length;
        Assert.StartsWith("Kept in the drill 'kept-standard-2-4-2': 1 voicing.", desk.Shelf.Keep(voicing));
        Assert.Equal(before + 1, desk.Shelf.Drills.Length);
        Assert.Contains(bench.Open().Shelf.Drills, drill => drill.Voicings.Any(kept => kept.Voicing.Equals(voicing)));
    }

    [Fact]
    public void Without_a_folder_nothing_is_said_to_be_kept()
    {
        Voicing voicing = Voicing.Parse(Setup.Parse("standard + 2-4@2").Value, "x 0 4 4 0 0").Value;
        Assert.Equal("Nothing can be kept: there is no data folder.", new DrillShelf([]).Keep(voicing));
    }

    [Fact]
    public void What_is_open_follows_what_is_learned_and_what_is_set()
    {
        using var bench = new Bench();
        Desk desk = bench.Open();
        Repertoire first = desk.Repertoire;
        Assert.Same(first, desk.Repertoire);
        desk.Use(desk.Settings with { Clamps = OwnClamps.Of(5) });
        Assert.All(desk.Repertoire.Drills, drill => Assert.True(desk.Settings.Clamps.Fit(drill.Setup)));
        Assert.NotEqual(first.Drills[0].Id, desk.Repertoire.Drills[0].Id);
    }

    [Fact]
    public void A_change_of_sound_closes_the_one_before_and_is_heard_by_who_listens_for_notices()
    {
        var first = new Device();
        var second = new Device();
        using var sound = new SoundInUse(first);
        int changes = 0;
        sound.Changed += (_, _) => changes++;
        first.Raise();
        sound.Change(() =>
        {
            Assert.True(first.IsClosed);
            return second;
        });
        first.Raise();
        second.Raise();
        Assert.Equal(2, changes);
        sound.Play(Performance.Silence);
        Assert.Equal((0, 1), (first.Plays, second.Plays));
    }

    // Past the cards, to the first question.
    private static void Begin(SessionRun run, Desk desk)
    {
        run.Begin();
        while (run.State.Card is not null)
        {
            run.Happen(new SessionEvent.WentOn(desk.Stamp()));
        }
    }

    private sealed class View : ISessionView
    {
        public List<string> Said { get; } = [];

        public void ShowQuestion(Question question) { }

        public void ShowCard(Card card) { }

        public void ShowHint(Hint hint) { }

        public void ShowVerdict(Verdict verdict, Grade grade) { }

        public void ShowGrade(Grade grade) { }

        public void Say(string words) => Said.Add(words);

        public void Finish(SessionSummary summary) { }
    }

    private sealed class Device : ISoundOut
    {
        public event EventHandler? Changed;

        public int Plays { get; private set; }

        public bool IsClosed { get; private set; }

        public bool IsAudible => true;

        public string? Notice => null;

        public IInstrument Instrument { get; set; } = null!;

        public void Raise() => Changed?.Invoke(this, EventArgs.Empty);

        public void Play(Performance performance) => Plays++;

        public void Stop() { }

        public void Dispose() => IsClosed = true;
    }
}
