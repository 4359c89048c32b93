using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>What voicings are asked for. Everything that is set must hold; the default asks for all.</summary>
public sealed record VoicingQuery
{
    /// <summary>A name counted from the home clamp; every correct name of the same notes over the same bass finds them.</summary>
    public ChordSymbol? ShapeName { get; init; }

    /// <summary>A name at concert pitch; every correct name of the same notes over the same bass finds them.</summary>
    public ChordSymbol? SoundingName { get; init; }

    /// <summary>The tones, all of them and no others.</summary>
    public DegreesWanted? Degrees { get; init; }

    /// <summary>
    /// The key that chords are ranked by where neither a name nor degrees are asked for, counted from the home clamp; what the setup
    /// suggests if null: see <see cref="SuggestedKey"/>.
    /// </summary>
    public MusicalKey? Key { get; init; }

    /// <summary>The highest sounding note.</summary>
    public NoteWanted? Top { get; init; }

    /// <summary>The lowest sounding note.</summary>
    public NoteWanted? Bass { get; init; }

    /// <summary>The fewest strings that ring with no finger.</summary>
    public int MinRinging { get; init; }

    /// <summary>The most strings that ring with no finger.</summary>
    public int MaxRinging { get; init; } = StringNumber.Most;

    /// <summary>Strings that must ring with no finger.</summary>
    public StringSet KeepRinging { get; init; }

    /// <summary>The fewest strings that sound.</summary>
    public int MinStrings { get; init; } = 1;

    /// <summary>True to leave out voicings with a muted string between sounding ones.</summary>
    public bool Unbroken { get; init; }

    /// <summary>The span of frets: the highest fretted fret less the lowest is smaller.</summary>
    public int? Span { get; init; }

    /// <summary>True to leave out what rings: a hand that can be moved along the neck as it is.</summary>
    public bool IsMoveable { get; init; }

    /// <summary>
    /// True for hands that move under ringing strings: two or more fretted strings above every clamp, two or more that ring, none muted
    /// between them.
    /// </summary>
    public bool IsDrone { get; init; }

    /// <summary>The position: every finger lies at this fret or up to three above it.</summary>
    public Fret? Position { get; init; }

    /// <summary>
    /// The greatest difficulty in points, compared to a tenth, half a tenth upward: see <see cref="Fingering.Difficulty"/>.
    /// </summary>
    public double? MaxDifficulty { get; init; }

    /// <summary>A voicing that the result should lie near: voices that move little come first. Any setup with as many strings.</summary>
    public Voicing? Near { get; init; }

    /// <summary>The most semitones that all voices together may move from <see cref="Near"/>.</summary>
    public int? MaxMovement { get; init; }

    /// <summary>True to allow fingers behind a clamp that leaves their string to a lower ground.</summary>
    public bool AllowBehindClamp { get; init; }

    /// <summary>True if any chord will do, so that those of the key come first.</summary>
    internal bool IsOpen => ShapeName is null && SoundingName is null && Degrees is null && (Near is null || Key is not null);

    /// <summary>How many voicings to return, the best; all are counted.</summary>
    public int Limit { get; init; } = 20;
}
