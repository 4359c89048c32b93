using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>What is held in the plain explorer, how it came to be, and what was found.</summary>
/// <param name="Held">The voicing under the hand.</param>
internal sealed record ExplorerHand(Voicing Held)
{
    /// <summary>The voicing that was held just before; null at the start.</summary>
    public Voicing? Before { get; init; }

    /// <summary>The voicing that was marked, to compare others with; null if none was.</summary>
    public Voicing? Marked { get; init; }

    /// <summary>Where undo goes, the nearest first. Stepping through what was found is one step in it.</summary>
    public ImmutableStack<Voicing> Past { get; init; } = [];

    /// <summary>What was found, the best first.</summary>
    public ImmutableArray<FoundHand> Found { get; init; } = [];

    /// <summary>Which of the found ones is held, from 0; null if none is.</summary>
    public int? At { get; init; }

    /// <summary>The same with all names spelled in a key; in those that the setups suggest if null.</summary>
    public ExplorerHand In(MusicalKey? key) => this with
    {
        Held = Held.In(key),
        Before = Before?.In(key),
        Marked = Marked?.In(key),
        Past = [.. Past.Reverse().Select(past => past.In(key))],
        Found = [.. Found.Select(found => found with { Whole = found.Whole with { Voicing = found.Whole.Voicing.In(key) } })],
    };

    /// <summary>The hand with another voicing in it. What was found in another setup is forgotten.</summary>
    public ExplorerHand Take(Voicing voicing) => this with
    {
        Held = voicing,
        Before = Held,
        Past = Past.Push(Held),
        At = null,
        Found = voicing.Setup.Equals(Held.Setup) ? Found : [],
    };

    /// <summary>The hand with one of the found voicings in it.</summary>
    public ExplorerHand Take(int at) => (At is null ? Take(Found[at].Whole.Voicing) : this with { Held = Found[at].Whole.Voicing, Before = Held }) with { At = at };

    /// <summary>The hand as it was before the last change; null if there was none.</summary>
    public ExplorerHand? Undo() => Past.IsEmpty ? null : this with
    {
        Held = Past.Peek(),
        Before = Held,
        Past = Past.Pop(),
        At = null,
        Found = Past.Peek().Setup.Equals(Held.Setup) ? Found : [],
    };
}
