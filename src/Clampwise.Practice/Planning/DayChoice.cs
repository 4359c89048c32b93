using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>What is asked on one day, and in which setups.</summary>
internal sealed class DayChoice
{
    // So many questions about what is due make it worth while to move the clamps; fewer wait for another day (tried on simulated learners).
    private const int FewestForAMove = 8;
    private const double BacklogFrom = 1.5;
    private readonly DailyWork _work;
    private readonly PlanRequest _request;
    private readonly List<PlannedItem> _chosen = [];
    private readonly HashSet<ItemKey> _taken = [];
    private double _seconds;

    public DayChoice(DailyWork work, PlanRequest request)
    {
        (_work, _request, _seconds) = (work, request, request.Length.TotalSeconds);
        Setups = request.MostSetups is { } most ? ChooseSetups(most) : [null];
        AddContrasts();
        AddDue();
        int due = _chosen.Count;
        Backlog = work.SecondsOf(work.Due) > BacklogFrom * request.Length.TotalSeconds ? BacklogOf(due) : null;
        AddNew();
        AddRest();
    }

    /// <summary>The setups of the day in the order of their blocks; one null if setups mix.</summary>
    public ImmutableArray<Setup?> Setups { get; }

    /// <summary>All that is asked, the most wanted first.</summary>
    public IReadOnlyList<PlannedItem> Chosen => _chosen;

    /// <summary>The plan for a backlog; null if there is none.</summary>
    public Backlog? Backlog { get; }

    /// <summary>What an item is asked beside, if both are asked.</summary>
    public ItemKey? ContrastOf(ItemKey key) => _work.Contrasts.Of(key);

    private bool IsOpen(PracticeItem item) => _request.MostMoves is null || Setups.Contains(item.Drill.Setup);

    // The setups in which most recall can be won back. One with next to nothing due waits, unless there is no other.
    private ImmutableArray<Setup?> ChooseSetups(int most)
    {
        var due = _work.Due.GroupBy(item => item.Drill.Setup)
            .Select(group => (Setup: group.Key, Gain: group.Sum(_work.Gain), Count: group.Count()))
            .OrderByDescending(group => group.Gain).ThenBy(group => group.Setup.ToString(), StringComparer.Ordinal).ToArray();
        List<Setup?> chosen = [.. _work.Contrasts.PressingSetups
            .Concat(due.Where((group, place) => place == 0 || group.Count >= FewestForAMove).Select(group => group.Setup)).Distinct().Take(most)];
        foreach (Setup setup in _work.New.Concat(_request.FillsTime ? _work.Rest : []).Select(item => item.Drill.Setup).Distinct())
        {
            if (chosen.Count < most && !chosen.Contains(setup) && (chosen.Count == 0 || !_work.New.Any(item => chosen.Contains(item.Drill.Setup))))
            {
                chosen.Add(setup);
            }
        }

        return [.. chosen];
    }

    private void AddDue()
    {
        double lacking = _work.Lacking - _chosen.Sum(planned => _work.Gain(planned.Item));
        foreach (PracticeItem item in _work.Fallen.Where(IsOpen).TakeWhile(_ => lacking > 0))
        {
            lacking -= Add(item, SessionPart.Due) ? _work.Gain(item) : 0;
        }
    }

    // Before all else: what was confused is to stand side by side in the very next session.
    private void AddContrasts()
    {
        foreach ((PracticeItem one, PracticeItem other) in _work.Contrasts.Pairs)
        {
            if (IsOpen(one) && _work.SecondsOf([one, other]) <= _seconds)
            {
                Add(one, SessionPart.Contrast);
                Add(other, SessionPart.Contrast);
            }
        }
    }

    private void AddNew()
    {
        int left = Backlog is null ? _work.NewAllowance : 0;
        foreach (PracticeItem item in _work.New.Where(IsOpen))
        {
            if (left <= 0 || !Add(item, SessionPart.New))
            {
                break;
            }

            left--;
        }
    }

    private void AddRest()
    {
        foreach (PracticeItem item in _request.FillsTime ? _work.Rest.Where(IsOpen) : [])
        {
            Add(item, SessionPart.Ahead);
        }
    }

    private bool Add(PracticeItem item, SessionPart part)
    {
        double seconds = _work.SecondsOf(item);
        if (_seconds < seconds || !_taken.Add(item.Key))
        {
            return false;
        }

        _seconds -= seconds;
        _chosen.Add(new PlannedItem(item, part));
        return true;
    }

    private Backlog BacklogOf(int today)
    {
        // Of those brought back about a quarter comes round again before the rest is through.
        double net = Math.Max(1, today * 0.75);
        return new Backlog(_work.Due.Length, today, (int)Math.Ceiling(_work.Due.Length / net));
    }
}
