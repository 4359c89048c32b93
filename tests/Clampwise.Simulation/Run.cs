using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>Months of sessions of one learner under one way of planning: the program's own sessions, questions and grades.</summary>
public sealed class Run
{
    private const double MinutesAMove = 0.75;
    private static readonly TimeSpan s_card = TimeSpan.FromSeconds(15);
    private static readonly DateTimeOffset s_evening = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);
    private static readonly QuestionOptions s_options = new(OffersNames: true) { HasGuitar = true };
    private readonly Pool _pool;
    private readonly Learner _learner;
    private readonly IPlans _plans;
    private readonly SessionWorld _world;
    private readonly int _seed;
    private readonly double _wish;
    private readonly List<DayFigures> _days = [];
    private readonly Dictionary<ItemKey, int> _opening = [];
    private MemoryState _memory;
    private int _ids;

    /// <summary>A run, not begun.</summary>
    public Run(Pool pool, ITruth truth, IPlans plans, int seed, double wish = 0.9)
    {
        (_pool, _plans, _seed, _wish) = (pool, plans, seed, wish);
        _learner = new Learner(truth, pool.Everything, seed + 1000);
        _world = new SessionWorld(pool.Everything, PracticeCalendar.Utc, s_options);
        _memory = MemoryState.Empty(new FsrsSettings(_wish));
    }

    /// <summary>The days so far.</summary>
    public IReadOnlyList<DayFigures> Days => _days;

    /// <summary>The day on which each item was first asked.</summary>
    public IReadOnlyDictionary<ItemKey, int> Opening => _opening;

    /// <summary>The player's log as memory.</summary>
    public MemoryState Memory => _memory;

    /// <summary>Practises so many days.</summary>
    public Run Go(int days)
    {
        for (int day = 0; day < days; day++)
        {
            Practise(day);
        }

        return this;
    }

    /// <summary>Mean true recall of everything from one day to another, the first counted as 1.</summary>
    public double Recall(int from, int to) => _days.Skip(from - 1).Take(to - from + 1).Average(day => day.All);

    /// <summary>Minutes from one day to another.</summary>
    public double Minutes(int from, int to) => _days.Skip(from - 1).Take(to - from + 1).Sum(day => day.Minutes);

    private void Practise(int day)
    {
        PracticeDay today = PracticeCalendar.Utc.DayOf(s_evening) + day;
        (double all, double opened, double shapes) = Truly(day);
        SessionPlan plan = _plans.Plan(new PlanRequest(_pool.OpenTo(_memory), _memory, today, unchecked((_seed * 1009) + day)), day);
        SessionState state = SessionState.Of(plan, default, _memory, unchecked((_seed * 1009) + day));
        var running = TimeSpan.FromHours(1);
        TimeSpan start = running;
        double extra = 0;
        double onKnown = 0;
        int questions = 0;
        Stamp Now() => new(new Moment(s_evening.AddDays(day) + running, running), new EntryId(new Guid(++_ids, 0, 0, new byte[8])));
        state = Session.Step(state, new SessionEvent.Begun(Now()), _world).State;
        while (state.Phase is SessionPhase.Asking or SessionPhase.Showing)
        {
            double time = day + Learner.DaysOf(running - start);
            if (state.Card is { } card)
            {
                // The clock of the session stands while the clamps move, and runs while a shape is shown.
                extra += card is Card.ClampsMove ? MinutesAMove : 0;
                if (card is Card.NewShape fresh)
                {
                    _learner.Show(fresh.Item, time);
                    running += s_card;
                }

                state = Session.Step(state, new SessionEvent.WentOn(Now()), _world).State;
                continue;
            }

            Question question = state.Open!.Question;
            ItemKey key = question.Item.Key;
            _learner.Show(question.Item, time);
            bool isEasy = _learner.Recall(key, time) >= 0.95;
            TimeSpan before = running;
            TimeSpan sound = question.Played.Length * TimeSpan.FromSeconds(1.5);
            state = Session.Step(state, new SessionEvent.QuestionShown(Now(), sound), _world).State;
            (Answer answer, double thinking, bool isRecalled) = _learner.Answer(question, time);
            running += sound + TimeSpan.FromSeconds(thinking + 1);
            SessionStep step = Session.Step(state, new SessionEvent.Answered(Now(), answer, TimeSpan.FromSeconds(1)), _world);
            if (step.State.Phase != SessionPhase.Judged)
            {
                step = Session.Step(state, new SessionEvent.Answered(Now(), new Answer.NotKnown(), TimeSpan.FromSeconds(1)), _world);
            }

            state = step.State;
            Attempt attempt = state.Outcomes[^1].Attempt;
            _learner.Learn(key, time, isRecalled);
            _plans.Saw(attempt);
            _opening.TryAdd(key, day);
            questions++;
            running += TimeSpan.FromSeconds(attempt.IsCorrect ? 3 : 6);
            onKnown += isEasy ? (running - before).TotalMinutes : 0;
            state = Session.Step(state, new SessionEvent.WentOn(Now()), _world).State;
        }

        _memory = state.Memory;
        _days.Add(new DayFigures(all, opened, shapes, questions, (running - start).TotalMinutes + extra, onKnown));
    }

    private (double All, double Opened, double Shapes) Truly(int day)
    {
        double sum = 0;
        double opened = 0;
        double shapes = 0;
        foreach (PracticeItem item in _pool.Items)
        {
            double recall = _learner.Recall(item.Key, day);
            sum += recall;
            opened += _opening.ContainsKey(item.Key) ? recall : 0;
            shapes += recall / _pool.DirectionsOf(item.Key.Shape);
        }

        return (sum / _pool.Items.Length, _opening.Count > 0 ? opened / _opening.Count : 0, shapes);
    }
}
