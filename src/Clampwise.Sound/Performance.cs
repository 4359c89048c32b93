using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Sound;

/// <summary>What is to be played, note by note in the order of their starts. The same performance always renders to the same samples.</summary>
public sealed class Performance : IEquatable<Performance>
{
    private Performance(ImmutableArray<PlayedNote> notes, int stringCount) => (Notes, StringCount) = (notes, stringCount);

    /// <summary>A performance of nothing.</summary>
    public static Performance Silence { get; } = new([], 0);

    /// <summary>The notes in the order of their starts; on one string each ends before the next one starts.</summary>
    public ImmutableArray<PlayedNote> Notes { get; }

    /// <summary>How many strings the instrument has; places the strings from left to right.</summary>
    public int StringCount { get; }

    /// <summary>Where and with what the strings are picked.</summary>
    public Pick Pick { get; private init; } = Pick.Standard;

    /// <summary>What A4 is tuned to.</summary>
    public ConcertPitch ConcertPitch { get; private init; }

    /// <summary>When the last note is damped.</summary>
    public TimeSpan End => Notes.Aggregate(TimeSpan.Zero, (end, note) => note.End > end ? note.End : end);

    /// <summary>
    /// A performance of notes. A string that is picked again is damped by the pick: its earlier note is cut short there. Starts before
    /// zero are refused by exception, as are lengths of zero or less: these are mistakes in code, not input.
    /// </summary>
    public static Performance Of(IEnumerable<PlayedNote> notes, int stringCount, Pick? pick = null, ConcertPitch concertPitch = default)
    {
        ImmutableArray<PlayedNote> ordered = [.. notes.OrderBy(note => note.Start)];
        if (ordered.Any(note => note.Start < TimeSpan.Zero || note.Length <= TimeSpan.Zero))
        {
            throw new ArgumentException(SoundWords.NoteOutOfTime, nameof(notes));
        }

        return new Performance(CutAtNextPick(ordered), stringCount) { Pick = pick ?? Pick.Standard, ConcertPitch = concertPitch };
    }

    /// <summary>This performance, then another that starts so long after this one's start.</summary>
    public Performance Then(Performance next, TimeSpan after) =>
        Of(Notes.Concat(next.Notes.Select(note => note with { Start = note.Start + after })), Math.Max(StringCount, next.StringCount), Pick, ConcertPitch);

    /// <summary>The same notes with their starts and lengths so many times as long, 1 to 8: slower, at the same pitch.</summary>
    public Performance Slower(double times) => times is >= 1.0 and <= 8.0
        ? Of(Notes.Select(note => note with { Start = note.Start * times, Length = note.Length * times }), StringCount, Pick, ConcertPitch)
        : throw new ArgumentOutOfRangeException(nameof(times), times, SoundWords.SlownessOutOfRange);

    /// <summary>The same with one string out of tune.</summary>
    public Performance Detuned(StringNumber number, Cents by) =>
        Of(Notes.Select(note => note.String == number ? note with { Detune = note.Detune + by } : note), StringCount, Pick, ConcertPitch);

    /// <inheritdoc/>
    public bool Equals(Performance? other) => other is not null && StringCount == other.StringCount && Pick == other.Pick
        && ConcertPitch == other.ConcertPitch && Notes.SequenceEqual(other.Notes);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Performance);

    /// <inheritdoc/>
    public override int GetHashCode() => Notes.Aggregate(HashCode.Combine(StringCount, Pick, ConcertPitch), HashCode.Combine);

    private static ImmutableArray<PlayedNote> CutAtNextPick(ImmutableArray<PlayedNote> ordered)
    {
        var notes = ordered.ToBuilder();
        var next = new Dictionary<StringNumber, TimeSpan>();
        for (int i = notes.Count - 1; i >= 0; i--)
        {
            PlayedNote note = notes[i];
            if (next.TryGetValue(note.String, out TimeSpan cut) && cut < note.End && cut > note.Start)
            {
                notes[i] = note with { Length = cut - note.Start };
            }

            next[note.String] = note.Start;
        }

        return notes.ToImmutable();
    }
}
