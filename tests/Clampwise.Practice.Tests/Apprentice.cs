namespace Clampwise.Practice.Tests;

/// <summary>
/// A learner who goes through drills at four new shapes a day, is asked what is due, forgets and takes like for like: it exists so that
/// questions are made at every stage of learning, with confusions on record. What it answers has nothing to do with the choices.
/// </summary>
internal sealed class Apprentice(Repertoire drills, int seed)
{
    private const int NewShapesEachDay = 4;
    private const int MostEachDay = 60;
    private readonly Random _random = new(seed);
    private readonly ShapeKey[] _shapes = [.. drills.Items.Select(item => item.Key.Shape).Distinct()];
    private readonly HeldNames _held = new(drills);
    private int _number;

    public MemoryState Memory { get; private set; } = Examples.Nothing;

    /// <summary>The questions of so many days that offer choices.</summary>
    public IEnumerable<AskedQuestion> Practise(int days)
    {
        var options = new QuestionOptions(OffersNames: true);
        for (int day = 0; day < days; day++)
        {
            PracticeDay today = Examples.Today + day;
            foreach (PracticeItem item in ItemsOf(day, today))
            {
                Question question = QuestionMaker.Make(item, new AskContext(drills, Memory, today, options, new Random(_random.Next())));
                if (!question.Choices.IsEmpty)
                {
                    yield return new AskedQuestion(question, _held, Memory, today);
                }

                Memory = Memory.With(AttemptAt(question, today));
            }
        }
    }

    private PracticeItem[] ItemsOf(int day, PracticeDay today)
    {
        ShapeKey[] met = [.. _shapes.Take((day + 1) * NewShapesEachDay)];
        Direction[] wanted = [.. Directions.Naming, Direction.HearPickShape];
        PracticeItem[] items = [.. met.SelectMany(shape => wanted.Select(direction => drills.Find(new ItemKey(shape, direction)))).OfType<PracticeItem>()
            .Where(item => !Memory.Items.TryGetValue(item.Key, out ItemMemory? memory) || memory.DueOn(Memory.Model) <= today)];
        _random.Shuffle(items);
        return [.. items.Take(MostEachDay)];
    }

    private Attempt AttemptAt(Question question, PracticeDay today)
    {
        bool isRight = _random.NextDouble() < 0.25 + (0.65 * (Memory.Recall(question.Item.Key, today) ?? 0.5));
        DrillVoicing[] likest = [.. drills.Others(question.Item).OrderByDescending(other => Likeness.OfSound(question.Subject, other.Voicing)).Take(2)];
        DateTimeOffset at = Examples.Evening.AddDays(today - Examples.Today).AddSeconds(++_number % 80_000);
        return new Attempt(
            new EntryId(new Guid(_number, 0, 0, new byte[8])), at, at, question.Item.Key, question.Item.Drill.Id, default, today,
            isRight ? question.Choices.IsEmpty ? Grade.Steady : Grade.Strained : Grade.Missed, isRight)
        {
            Choices = question.Choices.Length,
            ConfusedWith = isRight || likest.Length == 0 ? null : likest[_random.Next(likest.Length)].Key,
            Thinking = TimeSpan.FromSeconds(4),
        };
    }
}
