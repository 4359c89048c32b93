using System.Collections.Immutable;

namespace Clampwise.Practice;

/// <summary>What a question is made from.</summary>
/// <param name="Repertoire">Everything that can be asked; alternatives come from it.</param>
/// <param name="Memory">What is known of the player; confusions steer the alternatives.</param>
/// <param name="Day">Today.</param>
/// <param name="Options">How questions are put.</param>
/// <param name="Random">Seeded; the same seed makes the same question.</param>
public sealed record AskContext(Repertoire Repertoire, MemoryState Memory, PracticeDay Day, QuestionOptions Options, Random Random)
{
    /// <summary>
    /// So many other voicings in the setup of an item that pass a test, the most confusable first; filled up with variations of
    /// one string if the drills have too few.
    /// </summary>
    internal ImmutableArray<DrillVoicing> Alternatives(PracticeItem item, int count, Func<DrillVoicing, bool> test)
    {
        // A little chance keeps the same four from standing together every time.
        double Rank(DrillVoicing other) => Likeness.For(item.Subject, other, Memory, Day) + (Chance * Random.NextDouble());
        DrillVoicing[] known = [.. Repertoire.Others(item).Where(test).OrderByDescending(Rank).Take(count)];
        if (known.Length == count)
        {
            return [.. known];
        }

        DrillVoicing[] made = [.. Variations.OfOneString(item.Subject.Voicing).Select(voicing => new DrillVoicing(voicing))];
        Random.Shuffle(made);
        return [.. known, .. made.Where(test).Take(count - known.Length)];
    }

    /// <summary>
    /// True if a name is picked from choices: as the settings ask, until the shape has been right twice in the direction and was right the last
    /// time. From then on it is typed, and choices come back only after a miss.
    /// </summary>
    internal bool OffersChoices(ItemKey item) => Options.OffersNames
        && Memory.Items.GetValueOrDefault(item) is not { RightAnswers: >= RightBefore, WasRight: true };

    private const int RightBefore = 2;

    private const double Chance = 0.4;
}
