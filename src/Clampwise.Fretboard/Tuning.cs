using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The open pitches from the nut, lowest string first: 4 to 8 strings, none lower than the one before it.</summary>
public sealed class Tuning : IEquatable<Tuning>
{
    /// <summary>The fewest strings that an instrument may have here.</summary>
    public const int FewestStrings = 4;

    private Tuning(ImmutableArray<Pitch> pitches) => Pitches = pitches;

    /// <summary>E2 A2 D3 G3 B3 E4.</summary>
    public static Tuning Standard { get; } = new([.. new[] { 40, 45, 50, 55, 59, 64 }.Select(Pitch.FromMidi)]);

    /// <summary>Open pitches, lowest string first.</summary>
    public ImmutableArray<Pitch> Pitches { get; }

    /// <summary>How many strings there are, 4 to 8.</summary>
    public int StringCount => Pitches.Length;

    /// <summary>The name in the library of named tunings, if it has one.</summary>
    public string? Name => NamedTunings.NameOf(this);

    /// <summary>The strings, lowest in pitch first.</summary>
    public IEnumerable<StringNumber> Strings => Enumerable.Range(0, StringCount).Select(index => StringNumber.AtIndex(index, StringCount));

    /// <summary>The open pitch of a string.</summary>
    public Pitch this[StringNumber number] => Pitches[number.IndexAmong(StringCount)];

    /// <summary>A tuning from open pitches, lowest string first; refused with too few or too many strings, or one out of order.</summary>
    public static Result<Tuning> Create(IEnumerable<Pitch> pitches)
    {
        ImmutableArray<Pitch> all = [.. pitches];
        if (all.Length is < FewestStrings or > StringNumber.Most)
        {
            return FretboardWords.StringCountOutOfRange(all.Length);
        }

        for (int i = 1; i < all.Length; i++)
        {
            if (all[i] < all[i - 1])
            {
                return FretboardWords.StringOutOfOrder(StringNumber.AtIndex(i, all.Length), all[i], all[i - 1]);
            }
        }

        return all[^1].CanMove(Fret.Last) ? new Tuning(all) : FretboardWords.TuningTooHigh(all[^1]);
    }

    /// <summary>The same tuning so many semitones higher.</summary>
    public Result<Tuning> MovedBy(int semitones) => Pitches.All(pitch => pitch.CanMove(semitones))
        ? Create(Pitches.Select(pitch => pitch + semitones))
        : FretboardWords.TuningTooHigh(Pitches[^1]);

    /// <summary>Reads a tuning's name, such as <c>standard</c> or <c>drop D</c>, or its pitches, such as <c>D2 A2 D3 G3 A3 D4</c>.</summary>
    public static Result<Tuning> Parse(string text) => NamedTunings.Find(text.Trim()) is { } named ? named : ParsePitches(text);

    private static Result<Tuning> ParsePitches(string text)
    {
        var pitches = new List<Pitch>();
        foreach ((string word, int start) in Words.Split(text))
        {
            if (!Pitch.Parse(word).TryGet(out Pitch pitch, out Fault? fault))
            {
                return FretboardWords.ExpectedTuning(text, fault).ShiftedBy(start);
            }

            pitches.Add(pitch);
        }

        return Create(pitches);
    }

    /// <inheritdoc/>
    public bool Equals(Tuning? other) => other is not null && Pitches.SequenceEqual(other.Pitches);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Tuning);

    /// <inheritdoc/>
    public override int GetHashCode() => Pitches.Aggregate(0, HashCode.Combine);

    /// <summary>The tuning's name, else its pitches.</summary>
    public override string ToString() => Name ?? string.Join(' ', Pitches);
}
