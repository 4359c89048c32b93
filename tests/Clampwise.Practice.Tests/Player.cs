namespace Clampwise.Practice.Tests;

/// <summary>Sits at a session: keeps its state, moves its clock, and collects what it wants done.</summary>
internal sealed class Player(SessionState start, SessionWorld world, DateTimeOffset? from = null)
{
    private readonly DateTimeOffset _from = from ?? Examples.Evening;
    private TimeSpan _running = TimeSpan.FromHours(1);
    private int _ids;

    public SessionState State { get; private set; } = start;

    public List<LogEntry> Log { get; } = [];

    public List<SessionEffect> Effects { get; } = [];

    /// <summary>True to look at each card for five seconds and go on.</summary>
    public bool PassesCards { get; init; } = true;

    /// <summary>Shifts the wall clock without the running one, as when it is set.</summary>
    public TimeSpan WallShift { get; set; }

    public Stamp Now => new(new Moment(_from + _running + WallShift, _running), new EntryId(new Guid(++_ids, 0, 0, new byte[8])));

    public void Wait(double seconds) => _running += TimeSpan.FromSeconds(seconds);

    public SessionStep Do(Func<Stamp, SessionEvent> happens)
    {
        SessionStep step = Session.Step(State, happens(Now), world);
        State = step.State;
        Effects.AddRange(step.Effects);
        Log.AddRange(step.Effects.OfType<SessionEffect.Store>().Select(store => store.Entry));
        return step;
    }

    public void Begin()
    {
        Do(stamp => new SessionEvent.Begun(stamp));
        Show();
    }

    public void Show()
    {
        for (; PassesCards && State.Phase == SessionPhase.Showing; Wait(5))
        {
            Do(stamp => new SessionEvent.WentOn(stamp));
        }

        if (State is { Phase: SessionPhase.Asking, Open.Id: null })
        {
            Do(stamp => new SessionEvent.QuestionShown(stamp, State.Open.Question.Played.Length > 0 ? TimeSpan.FromSeconds(2) : TimeSpan.Zero));
        }
    }

    public SessionStep Answer(Answer answer, double thinking = 4, double entry = 1)
    {
        Wait(thinking + entry + State.Open!.Sound.TotalSeconds);
        return Do(stamp => new SessionEvent.Answered(stamp, answer, TimeSpan.FromSeconds(entry)));
    }

    public void GoOn()
    {
        Do(stamp => new SessionEvent.WentOn(stamp));
        Show();
    }

    /// <summary>Plays to the end, right with the given chance.</summary>
    public SessionSummary PlayOn(double rightChance = 0.85, int seed = 3)
    {
        var random = new Random(seed);
        while (State.Phase == SessionPhase.Asking)
        {
            Answer(random.NextDouble() < rightChance ? Examples.Right(State.Open!.Question) : new Answer.NotKnown());
            Wait(3);
            GoOn();
        }

        return Effects.OfType<SessionEffect.Finish>().Single().Summary;
    }
}
