using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The open pitches from the nut, lowest string first: 4 to 8 strings, none lower than the one before it.</summary>
public sealed class Tuning : IEquatable<Tuning>
{
    /// <summary>The fewest strings that an instrument may have here.</summary>
    public const int FewestStrings = 4;

    /// <summary>
    /// The lowest open pitch, C0: hearing ends a little above it (16 Hz), and clamps count down to it without leaving MIDI.
    /// </summary>
    public static Pitch Lowest { get; } = Pitch.FromMidi(12);

    /// <summary>The highest open pitch, C7: 24 frets above it are still MIDI notes.</summary>
    public static Pitch Highest { get; } = Pitch.FromMidi(96);

    private readonly Lazy<int> _aboveLetters;

    private Tuning(ImmutableArray<Pitch> pitches, int? aboveLetters = null)
    {
        Pitches = pitches;
        _aboveLetters = aboveLetters is { } known ? new Lazy<int>(known) : new Lazy<int>(() => NamedTunings.AboveLetters(this));
    }

    /// <summary>E2 A2 D3 G3 B3 E4.</summary>
    public static Tuning Standard { get; } = new([.. new[] { 40, 45, 50, 55, 59, 64 }.Select(Pitch.FromMidi)]);

    /// <summary>Open pitches, lowest string first.</summary>
    public ImmutableArray<Pitch> Pitches { get; }

    /// <summary>How many strings there are, 4 to 8.</summary>
    public int StringCount => Pitches.Length;

    /// <summary>The name in the library of named tunings, if it has one.</summary>
    public string? Name => NamedTunings.NameOf(this);

    /// <summary>
    /// Semitones that the tuning as a whole lies above the named one whose letters its shapes take; negative below, and 0 for a tuning
    /// that takes its own.
    /// </summary>
    public int AboveLetters => _aboveLetters.Value;

    /// <summary>The strings, lowest in pitch first.</summary>
    public IEnumerable<StringNumber> Strings => Enumerable.Range(0, StringCount).Select(index => StringNumber.AtIndex(index, StringCount));

    /// <summary>The open pitch of a string.</summary>
    public Pitch this[StringNumber number] => Pitches[number.IndexAmong(StringCount)];

    /// <summary>
    /// A tuning from open pitches, lowest string first; refused with too few or too many strings, one out of order, or one outside
    /// <see cref="Lowest"/> to <see cref="Highest"/>.
    /// </summary>
    public static Result<Tuning> Create(IEnumerable<Pitch> pitches)
    {
        ImmutableArray<Pitch> all = [.. pitches];
        return FirstFault(all) is { } first ? first.Fault : new Tuning(all);
    }

    // The place is that of the string at fault, or of the first one too many, or past the end where one is missing.
    private static (Fault Fault, int Place)? FirstFault(ImmutableArray<Pitch> all)
    {
        if (all.Length is < FewestStrings or > StringNumber.Most)
        {
            return (FretboardWords.StringCountOutOfRange(all.Length), Math.Min(all.Length, StringNumber.Most));
        }

        for (int i = 0; i < all.Length; i++)
        {
            var number = StringNumber.AtIndex(i, all.Length);
            if (i > 0 && all[i] < all[i - 1])
            {
                return (FretboardWords.StringOutOfOrder(number, all[i], all[i - 1]), i);
            }

            if (all[i] < Lowest || all[i] > Highest)
            {
                return (FretboardWords.PitchOutOfRange(number, all[i]), i);
            }
        }

        return null;
    }

    /// <summary>The same tuning so many semitones higher.</summary>
    public Result<Tuning> MovedBy(int semitones) => Pitches.All(pitch => pitch.CanMove(semitones))
        ? Create(Pitches.Select(pitch => pitch + semitones))
        : FretboardWords.TuningMovedAway(semitones);

    /// <summary>The same tuning so many semitones higher as one of its own: the letters of its shapes move along.</summary>
    public Result<Tuning> Retuned(int semitones) => MovedBy(semitones).Select(moved => new Tuning(moved.Pitches, AboveLetters));

    /// <summary>
    /// Reads a tuning's name, such as <c>standard</c> or <c>drop D</c>, or its pitches, such as <c>D2 A2 D3 G3 A3 D4</c>.
    /// </summary>
    public static Result<Tuning> Parse(string text) => NamedTunings.Find(text.Trim()) is { } named ? named : ParsePitches(text);

    private static Result<Tuning> ParsePitches(string text)
    {
        var pitches = new List<Pitch>();
        var starts = new List<int>();
        foreach ((string word, int start) in SpacedWords.Split(text))
        {
            if (!Pitch.Parse(word).TryGet(out Pitch pitch, out Fault? fault))
            {
                return FretboardWords.ExpectedTuning(text, fault).ShiftedBy(start);
            }

            pitches.Add(pitch);
            starts.Add(start);
        }

        starts.Add(text.TrimEnd().Length);
        ImmutableArray<Pitch> all = [.. pitches];
        return FirstFault(all) is { } first ? first.Fault with { Column = starts[first.Place] + 1 } : new Tuning(all);
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
