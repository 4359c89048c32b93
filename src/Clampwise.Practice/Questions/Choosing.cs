using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What stands among the choices of a question: shapes that the player has met in its setup, dealt without looking at which is asked.</summary>
internal sealed class Choosing
{
    // What is weak is asked more often: as weak ones must sit beside it, or the player's worst would tell (our judgement).
    private const double TurnWorth = 0.5;
    private const double ConfusionWorth = 2;
    private const double NeverAsked = 0.1;

    private readonly PracticeItem _item;
    private readonly AskContext _context;
    private readonly Deal _deal;
    private readonly Dictionary<Confusion, double> _confused;

    /// <summary>The choosing for an item.</summary>
    /// <param name="item">The item.</param>
    /// <param name="context">What the question is made from.</param>
    /// <param name="mayMeet">True if two may stand among the same choices.</param>
    public Choosing(PracticeItem item, AskContext context, Func<Clampwise.Fretboard.Voicing, Clampwise.Fretboard.Voicing, bool> mayMeet)
    {
        (_item, _context) = (item, context);
        _confused = context.Memory.Confusions.Where(pair => pair.Key.Asked.Rig == item.Key.Shape.Rig)
            .ToDictionary(pair => pair.Key, pair => pair.Value.WeightOn(context.Day));
        DrillVoicing[] all = [.. context.Repertoire.Others(item), item.Subject];
        context.Random.Shuffle(all);
        InSetup = [.. all];
        var confused = _confused.SelectMany(pair => new[] { (pair.Key.Asked, pair.Value), (Asked: pair.Key.Taken, pair.Value) })
            .GroupBy(pair => pair.Asked).ToDictionary(group => group.Key, group => group.Max(pair => pair.Value));
        Met = [.. all.Where(IsMet).OrderByDescending(shape => confused.GetValueOrDefault(shape.Key))];
        Dictionary<DrillVoicing, double> turns = Met.ToDictionary(shape => shape, TurnsOf);
        _deal = new Deal(context.Options.ChoiceCount, LikenessOf, (one, other) => mayMeet(one.Voicing, other.Voicing), context.Random);

        double LikenessOf(DrillVoicing one, DrillVoicing other) => Likeness.OfSound(one.Voicing, other.Voicing)
            + (ConfusionWorth * (WeightOf(one, other) + WeightOf(other, one))) - (TurnWorth * Math.Abs(turns[one] - turns[other]));
    }

    /// <summary>Every shape of the setup.</summary>
    public ImmutableArray<DrillVoicing> InSetup { get; }

    /// <summary>What the player has met of them, and what was taken for it, the subject with it, the most confused first.</summary>
    public ImmutableArray<DrillVoicing> Met { get; }

    /// <summary>The subject and as many others as the choices want, from what was met if that is enough, else with more from elsewhere.</summary>
    /// <param name="elsewhere">What fills up, in turn.</param>
    public ImmutableArray<DrillVoicing> Table(params IEnumerable<IEnumerable<DrillVoicing>> elsewhere)
    {
        ImmutableArray<DrillVoicing> table = _deal.Filled(_deal.TableOf(_item.Subject, [.. Met.Where(IsAskedSo)]), Met);
        foreach (IEnumerable<DrillVoicing> more in elsewhere)
        {
            table = _deal.Filled(table, more);
        }

        return table;
    }

    private bool IsMet(DrillVoicing shape) => shape.Key == _item.Key.Shape
        || Directions.All.Any(direction => _context.Memory.Items.ContainsKey(new ItemKey(shape.Key, direction)));

    // One that is steady is not asked by choices, one whose turn is another day is not heard today: they could never be the right one.
    private bool IsAskedSo(DrillVoicing shape)
    {
        ItemKey key = _item.Key with { Shape = shape.Key };
        return key == _item.Key || (key.Direction.PicksShape() ? IsItsTurn(key) : _context.OffersChoices(key));
    }

    private bool IsItsTurn(ItemKey key) => !_context.Memory.Items.TryGetValue(key, out ItemMemory? memory)
        || memory.LastDay >= _context.Day || memory.DueOn(_context.Memory.Model) <= _context.Day;

    private double TurnsOf(DrillVoicing shape) =>
        Math.Log(_context.Memory.Items.GetValueOrDefault(_item.Key with { Shape = shape.Key })?.Memory.Stability ?? NeverAsked);

    private double WeightOf(DrillVoicing asked, DrillVoicing taken) => _confused.GetValueOrDefault(new Confusion(asked.Key, taken.Key));
}
