using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>A shape told by one that was met before: the same hand but for a string or two.</summary>
/// <param name="Met">The shape that was met.</param>
/// <param name="New">The new one, in the same setup.</param>
public sealed record LikeShape(Voicing Met, Voicing New)
{
    // With more strings changed it is another hand (our judgement).
    private const int MostStrings = 2;

    /// <summary>What parts them in a sentence: <c>The same hand as D, but string 4 one fret lower.</c></summary>
    public string Words => SessionWords.LikeShape(Met.ShapeName, Changed(Met, New).Select(index =>
        SessionWords.StopChange(New.Strings[index].Number, Met.Strings[index].Stop, New.Strings[index].Stop, New.Setup)));

    /// <summary>The nearest of the shapes that were met, in this session too; null if none is so near.</summary>
    internal static LikeShape? Of(PracticeItem item, Repertoire repertoire, SessionState state) => repertoire.Others(item)
        .Where(other => state.CardsShown.Contains(other.Key) || Directions.All.Any(direction => state.Memory.Items.ContainsKey(new ItemKey(other.Key, direction))))
        .Select(other => (Shape: new LikeShape(other.Voicing, item.Subject.Voicing), Count: Changed(other.Voicing, item.Subject.Voicing).Count()))
        .Where(pair => pair.Count <= MostStrings && pair.Shape.IsOneHand)
        .OrderBy(pair => pair.Count)
        .Select(pair => pair.Shape).FirstOrDefault();

    // A finger at least stays where it is, or there is no hand to be the same.
    private bool IsOneHand => Met.Strings.Zip(New.Strings).Any(pair => pair.First.Stop.IsFretted && pair.First.Stop == pair.Second.Stop);

    private static IEnumerable<int> Changed(Voicing one, Voicing other) =>
        Enumerable.Range(0, one.Strings.Length).Where(index => one.Strings[index].Stop != other.Strings[index].Stop);
}
