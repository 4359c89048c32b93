using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Lists of choices.</summary>
internal static class Choices
{
    /// <summary>The right one among wrong ones; empty if there is no wrong one to choose from.</summary>
    public static ImmutableArray<Choice> Shuffled(Choice right, IEnumerable<Choice> wrong, Random random)
    {
        Choice[] all = [right, .. wrong];
        random.Shuffle(all);
        return all.Length > 1 ? [.. all] : [];
    }

    /// <summary>The choice of an index.</summary>
    public static Result<Choice> Pick(Question question, Answer.Chosen chosen) =>
        chosen.Index >= 0 && chosen.Index < question.Choices.Length
            ? question.Choices[chosen.Index]
            : PracticeWords.NoSuchChoice(chosen.Index + 1, question.Choices.Length);

    /// <summary>Half of the wrong choices, rounded down, by index.</summary>
    public static ImmutableArray<int> RuledOut(ImmutableArray<Choice> choices, Clampwise.Fretboard.Voicing right, Random random)
    {
        int[] wrong = [.. Enumerable.Range(0, choices.Length).Where(index => !choices[index].Voicing.Equals(right))];
        random.Shuffle(wrong);
        return [.. wrong.Take(choices.Length / 2).Order()];
    }
}
