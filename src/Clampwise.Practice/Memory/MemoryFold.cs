using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>Adds attempts to a memory state one by one, in order.</summary>
internal sealed class MemoryFold(MemoryState start)
{
    private readonly ImmutableDictionary<ItemKey, ItemMemory>.Builder _items = start.Items.ToBuilder();
    private readonly ImmutableDictionary<Direction, UsualTime>.Builder _times = start.UsualTimes.ToBuilder();
    private readonly ImmutableDictionary<SkillKey, Skill>.Builder _skills = start.Skills.ToBuilder();
    private readonly ImmutableDictionary<Confusion, ConfusionCount>.Builder _confusions = start.Confusions.ToBuilder();
    private Correction _correction = start.Correction;
    private UsualRound _usualRound = start.UsualRound;
    private FirstAnswers _firstAnswers = start.FirstAnswers;
    private LastAnswer? _before = start.Before;
    private DateTimeOffset _latest = start.LatestAt;
    private int _count = start.AttemptCount;

    public void Add(Attempt attempt)
    {
        UsualTime usual = _times.TryGetValue(attempt.Item.Direction, out UsualTime own) ? own : UsualTime.FirstGuess(attempt.Item.Direction);
        double slowness = usual.Slowness(attempt.Thinking);
        if (_items.TryGetValue(attempt.Item, out ItemMemory? known))
        {
            AddCorrection(attempt, known);
            _items[attempt.Item] = known.After(attempt, slowness, start.Model);
        }
        else
        {
            _items[attempt.Item] = ItemMemory.First(attempt, slowness, start.Model);
            AddSkill(attempt);
        }

        if (attempt is { IsCorrect: true, Hints: 0 } && attempt.Thinking > TimeSpan.Zero)
        {
            _times[attempt.Item.Direction] = usual.After(attempt.Thinking);
        }

        AddTellingApart(attempt);
        AddConfusion(attempt);
        _usualRound = _usualRound.After(attempt.At - _latest, attempt.Thinking);
        _latest = attempt.At > _latest ? attempt.At : _latest;
        _count++;
    }

    public MemoryState ToState() => start with
    {
        Items = _items.ToImmutable(),
        UsualTimes = _times.ToImmutable(),
        Skills = _skills.ToImmutable(),
        Confusions = _confusions.ToImmutable(),
        Correction = _correction,
        UsualRound = _usualRound,
        FirstAnswers = _firstAnswers,
        Before = _before,
        LatestAt = _latest,
        AttemptCount = _count,
    };

    // First answers only: from the second on the item's own memory speaks. A warm one would flatter.
    private void AddSkill(Attempt attempt)
    {
        if (attempt is not { IsPrimed: false, Foreseen: { } foreseen })
        {
            return;
        }

        bool isRight = attempt is { IsCorrect: true, Hints: 0 };
        foreach (SkillKey key in new SkillKey[] { new(attempt.Item.Direction, null), new(attempt.Item.Direction, attempt.Family) })
        {
            _skills[key] = (_skills.TryGetValue(key, out Skill skill) ? skill : default).After(isRight, foreseen);
        }
    }

    // Only what was answered cold, on a later day and without help, says how well it was remembered.
    private void AddCorrection(Attempt attempt, ItemMemory known)
    {
        if (attempt is { IsPrimed: false, Hints: 0 } && known.DaysSince(attempt.Day) is > 0 and var days)
        {
            _correction = _correction.After(known, days, attempt.IsCorrect, attempt.Luck, start.Model);
            _firstAnswers = known.FirstDay == known.LastDay ? _firstAnswers.After(attempt.IsCorrect, attempt.Luck) : _firstAnswers;
        }
    }

    // Asked straight after the one that it was taken for: told apart if both are right. Each answer counts for one pair.
    private void AddTellingApart(Attempt attempt)
    {
        LastAnswer? before = _before;
        _before = new LastAnswer(attempt.Item, attempt.Day, attempt.IsCorrect);
        if (before is null || before.Day != attempt.Day || before.Item.Shape == attempt.Item.Shape || before.Item.Direction != attempt.Item.Direction)
        {
            return;
        }

        foreach (Confusion pair in new Confusion[] { new(before.Item.Shape, attempt.Item.Shape), new(attempt.Item.Shape, before.Item.Shape) })
        {
            if (_confusions.TryGetValue(pair, out ConfusionCount count))
            {
                _confusions[pair] = count.Beside(before.IsCorrect && attempt.IsCorrect);
                _before = null;
            }
        }
    }

    private void AddConfusion(Attempt attempt)
    {
        if (attempt is { IsCorrect: false, ConfusedWith: { } taken } && taken != attempt.Item.Shape)
        {
            var key = new Confusion(attempt.Item.Shape, taken);
            _confusions[key] = _confusions.GetValueOrDefault(key, new ConfusionCount(0, 0, attempt.Day)).After(attempt.Day, attempt.Item.Direction);
            var other = new Confusion(taken, attempt.Item.Shape);
            if (_confusions.TryGetValue(other, out ConfusionCount count))
            {
                _confusions[other] = count.Beside(areBothRight: false);
            }
        }
    }
}
