using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Sound.Performing;

/// <summary>
/// The order in which an arpeggio picks the sounding strings of a voicing, counted from 1, the lowest that sounds. Written as numbers
/// with spaces, such as <c>1 3 5 4</c>; a number beyond the sounding strings means the highest.
/// </summary>
public sealed class ArpeggioPattern
{
    private const int Longest = 64;

    private ArpeggioPattern(ImmutableArray<int> order) => Order = order;

    /// <summary>From the lowest string to the highest.</summary>
    public static ArpeggioPattern Upward { get; } = new([.. Enumerable.Range(1, Fretboard.StringNumber.Most)]);

    /// <summary>From the highest string to the lowest.</summary>
    public static ArpeggioPattern Downward { get; } = new([.. Enumerable.Range(1, Fretboard.StringNumber.Most).Reverse()]);

    /// <summary>The order; 1 is the lowest sounding string.</summary>
    public ImmutableArray<int> Order { get; }

    /// <summary>Reads a pattern of 1 to 64 numbers from 1 to 8.</summary>
    public static Result<ArpeggioPattern> Parse(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is 0 or > Longest)
        {
            return SoundWords.ArpeggioLength(words.Length, Longest);
        }

        var order = ImmutableArray.CreateBuilder<int>(words.Length);
        foreach (string word in words)
        {
            if (!int.TryParse(word, out int place) || place < 1 || place > Fretboard.StringNumber.Most)
            {
                return SoundWords.ArpeggioPlace(word, text.IndexOf(word, StringComparison.Ordinal));
            }

            order.Add(place);
        }

        return new ArpeggioPattern(order.MoveToImmutable());
    }

    /// <summary>The indexes among so many sounding strings; the two plain patterns leave out what isn't there.</summary>
    internal IEnumerable<int> Indexes(int sounding) => this == Upward || this == Downward
        ? Order.Where(place => place <= sounding).Select(place => place - 1)
        : Order.Select(place => Math.Min(place, sounding) - 1);

    /// <inheritdoc/>
    public override string ToString() => string.Join(' ', Order);
}
