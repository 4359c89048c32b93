using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice.Tests;

/// <summary>A question with choices, the moment that it was asked at, and what a guesser may look at.</summary>
internal sealed class AskedQuestion(Question question, HeldNames held, MemoryState memory, PracticeDay day)
{
    private readonly Lazy<NamedChoice[]> _named = new(() => [.. question.Choices.Select(choice => new NamedChoice(choice))]);

    public Question Question => question;

    public MemoryState Memory => memory;

    public int RightAt { get; } = question.Choices.Select((choice, at) => (choice, at)).Single(pair => pair.choice.Voicing.Equals(question.Subject)).at;

    public int HomeFret => question.Setup.HomeFret.Number;

    /// <summary>True if the other name of the right one is among the choices.</summary>
    public bool OffersOtherName => HasOtherNameOf(RightAt);

    public double AgainstOthers(int at, Func<NamedChoice, NamedChoice, double> likeness) =>
        Enumerable.Range(0, question.Choices.Length).Where(other => other != at).Sum(other => likeness(_named.Value[at], _named.Value[other]));

    /// <summary>True if the same chord so many semitones away is among the choices.</summary>
    public bool HasAt(int at, int semitones)
    {
        string wanted = $"{_named.Value[at].Symbol.TransposedBy(semitones).Respelled}";
        return semitones % 12 != 0 && _named.Value.Any(choice => $"{choice.Symbol.Respelled}" == wanted);
    }

    /// <summary>True if the name that the same shape has on the other side is there: a tone lower for a sounding name two frets up.</summary>
    public bool HasOtherNameOf(int at) => HasAt(at, IsShapeName ? HomeFret : -HomeFret);

    public bool IsHeldInSetup(int at) => Bearers(at) > 0;

    public bool IsHeldOnSide(int at) => held.Side(IsShapeName).Contains(question.Choices[at].Text);

    public bool IsHeld(int at) => held.Side(true).Contains(question.Choices[at].Text) || held.Side(false).Contains(question.Choices[at].Text);

    public bool IsShapeHeld(int at) => held.In(question.Setup).Any(pair => pair.Key == ShapeKey.Of(question.Choices[at].Voicing));

    public int Bearers(int at) => BearersOf(at).Count();

    public int Tones(int at) => _named.Value[at].Tones.Count;

    public int PlaceInAlphabet(int at) => question.Choices.Count(choice => string.CompareOrdinal(choice.Text, question.Choices[at].Text) < 0);

    /// <summary>What is remembered, in the direction that is asked, of the shapes that a choice may stand for.</summary>
    public IEnumerable<ItemMemory> Of(int at) => ShapesOf(at).Select(shape => memory.Items.GetValueOrDefault(new ItemKey(shape, question.Direction))).OfType<ItemMemory>();

    public double Recall(int at) => Of(at).Select(item => item.RecallOn(day, memory.Model)).DefaultIfEmpty(0).Min();

    public double DaysSince(int at) => Of(at).Select(item => item.DaysSince(day)).DefaultIfEmpty(1000).Max();

    public double TakenFor(int at) => memory.Confusions.Where(pair => ShapesOf(at).Contains(pair.Key.Asked)).Sum(pair => pair.Value.Times);

    public double Taken(int at) => memory.Confusions.Where(pair => ShapesOf(at).Contains(pair.Key.Taken)).Sum(pair => pair.Value.Times);

    /// <summary>True if the player has met the shape of a choice, or one that bears its name in the setup.</summary>
    public bool IsMet(int at) => ShapesOf(at).Any(shape => shape == question.Item.Key.Shape || Directions.All.Any(direction => memory.Items.ContainsKey(new ItemKey(shape, direction))));

    private bool IsShapeName => question.Direction == Direction.SeeShapeSayShapeName;

    private IEnumerable<ShapeKey> BearersOf(int at) => held.In(question.Setup)
        .Where(pair => (IsShapeName ? pair.Value.Shape : pair.Value.Sounding) == question.Choices[at].Text).Select(pair => pair.Key);

    private IEnumerable<ShapeKey> ShapesOf(int at) => question.Direction.PicksShape()
        ? [ShapeKey.Of(question.Choices[at].Voicing)]
        : BearersOf(at);

    /// <summary>A choice with what its name says.</summary>
    internal sealed class NamedChoice(Choice choice)
    {
        public string Text => choice.Text;

        public Voicing Voicing => choice.Voicing;

        public ChordSymbol Symbol { get; } = ChordSymbol.Parse(choice.Text.Split(" (")[0]).Value;

        public HashSet<PitchClass> Tones => field ??= [.. Symbol.Tones.Select(tone => tone.Note.Class)];
    }
}
