using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>What is to be played, note by note in the order of their starts. The same performance always renders to the same samples.</summary>
public sealed class Performance : IEquatable<Performance>
{
    private Performance(ImmutableArray<PlayedNote> notes, ImmutableArray<Click> clicks, int stringCount, Pick pick, ConcertPitch concertPitch) =>
        (Notes, Clicks, StringCount, Pick, ConcertPitch) = (notes, clicks, stringCount, pick, concertPitch);

    /// <summary>A performance of nothing.</summary>
    public static Performance Silence { get; } = new([], [], 0, Pick.Standard, default);

    /// <summary>The notes in the order of their starts; on one string each ends before the next one starts.</summary>
    public ImmutableArray<PlayedNote> Notes { get; }

    /// <summary>The metronome's clicks in the order of their starts.</summary>
    public ImmutableArray<Click> Clicks { get; }

    /// <summary>How many strings the instrument has; places the strings from left to right.</summary>
    public int StringCount { get; }

    /// <summary>Where and with what the strings are picked.</summary>
    public Pick Pick { get; }

    /// <summary>What A4 is tuned to.</summary>
    public ConcertPitch ConcertPitch { get; }

    /// <summary>When the last note is damped, or the last click comes.</summary>
    public TimeSpan End => Notes.Select(note => note.End).Concat(Clicks.Select(click => click.Start)).DefaultIfEmpty().Max();

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

        return new Performance(CutAtNextPick(ordered), [], stringCount, pick ?? Pick.Standard, concertPitch);
    }

    /// <summary>A metronome alone.</summary>
    public static Performance OfClicks(IEnumerable<Click> clicks) => Silence.With(clicks);

    /// <summary>This performance, then another that starts so long after this one's start.</summary>
    public Performance Then(Performance next, TimeSpan after) => Joined(next, after, this);

    /// <summary>Another performance with this one laid into it so long after its start; pick and concert pitch are this one's.</summary>
    public Performance Under(Performance other, TimeSpan after) => other.Joined(this, after, this);

    /// <summary>The same notes and clicks with their times so many times as long, 1 to 8: slower, at the same pitch.</summary>
    public Performance Slower(double times) => times is >= 1.0 and <= 8.0
        ? Moved(note => note with { Start = note.Start * times, Length = note.Length * times })
            .With(Clicks.Select(click => click with { Start = click.Start * times }))
        : throw new ArgumentOutOfRangeException(nameof(times), times, SoundWords.SlownessOutOfRange);

    /// <summary>The same with one string out of tune.</summary>
    public Performance Detuned(StringNumber number, Cents by) =>
        Moved(note => note.String == number ? note with { Detune = note.Detune + by } : note).With(Clicks);

    /// <inheritdoc/>
    public bool Equals(Performance? other) => other is not null && StringCount == other.StringCount && Pick == other.Pick
        && ConcertPitch == other.ConcertPitch && Notes.SequenceEqual(other.Notes) && Clicks.SequenceEqual(other.Clicks);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Performance);

    /// <inheritdoc/>
    public override int GetHashCode() => Notes.Aggregate(HashCode.Combine(StringCount, Pick, ConcertPitch, Clicks.Length), HashCode.Combine);

    private Performance Moved(Func<PlayedNote, PlayedNote> change) => Of(Notes.Select(change), StringCount, Pick, ConcertPitch);

    private Performance With(IEnumerable<Click> clicks) =>
        new(Notes, [.. clicks.OrderBy(click => click.Start)], StringCount, Pick, ConcertPitch);

    private Performance Joined(Performance next, TimeSpan after, Performance settings) =>
        Of(
            Notes.Concat(next.Notes.Select(note => note with { Start = note.Start + after })),
            Math.Max(StringCount, next.StringCount),
            settings.Pick,
            settings.ConcertPitch)
        .With(Clicks.Concat(next.Clicks.Select(click => click with { Start = click.Start + after })));

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
