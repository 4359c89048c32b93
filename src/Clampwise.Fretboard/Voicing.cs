using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A fretting in a setup, with its sounding pitches and its two names. Made only of frettings that the clamps allow.</summary>
public sealed class Voicing : IEquatable<Voicing>
{
    private readonly Lazy<Sonority> _sounding;
    private readonly Lazy<Sonority> _shape;

    private Voicing(Setup setup, Fretting fretting)
    {
        Setup = setup;
        Fretting = fretting;
        Strings = [.. setup.Strings.Select(number => Sound(setup, number, fretting[number]))];
        Pitches = [.. Strings.Where(s => s.Pitch is not null).Select(s => s.Pitch!.Value)];
        _sounding = new Lazy<Sonority>(() => Sonority.Read(Pitches.AsSpan(), setup.SoundingKey));
        _shape = new Lazy<Sonority>(() => Sonority.Read(FromHome(setup, Pitches).AsSpan(), setup.Key));
    }

    /// <summary>The setup that it is played in.</summary>
    public Setup Setup { get; }

    /// <summary>What the hand does.</summary>
    public Fretting Fretting { get; }

    /// <summary>Every string, lowest first.</summary>
    public ImmutableArray<SoundingString> Strings { get; }

    /// <summary>The sounding pitches, lowest string first; a clamp can make a lower string sound above a higher one.</summary>
    public ImmutableArray<Pitch> Pitches { get; }

    /// <summary>The strings that sound another pitch in another voicing, or sound in one of the two only. Throws for another number of strings.</summary>
    public StringSet SoundsOtherwise(Voicing other) => Strings.Length == other.Strings.Length
        ? StringSet.Of(Strings.Zip(other.Strings).Where(pair => pair.First.Pitch != pair.Second.Pitch).Select(pair => pair.First.Number))
        : throw new ArgumentException("Voicings with different numbers of strings have no strings in common.", nameof(other));

    /// <summary>The same with its names spelled in a key of the shapes; in the one that the setup suggests if null.</summary>
    public Voicing In(MusicalKey? key) => new(Setup.In(key), Fretting);

    /// <summary>
    /// The sounding pitches in words, lowest string first, spelled as in the first reading, without one as in the sounding key: <c>D#4</c> in a
    /// B chord.
    /// </summary>
    public ImmutableArray<string> PitchNames => Sounding.Readings is [var first, ..]
        ? [.. first.Tones.Select(tone => $"{tone.Spelled}")]
        : [.. Pitches.Select(pitch => $"{Setup.Spell(pitch)}")];

    /// <summary>What every string sounds in the words of <see cref="PitchNames"/>, lowest first; null for a muted one.</summary>
    public ImmutableArray<string?> StringNotes
    {
        get
        {
            int next = 0;
            ImmutableArray<string> names = PitchNames;
            return [.. Strings.Select(sounding => sounding.Pitch is null ? null : names[next++])];
        }
    }

    /// <summary>How it reads at concert pitch.</summary>
    public Sonority Sounding => _sounding.Value;

    /// <summary>How it reads counted from the home clamp.</summary>
    public Sonority Shape => _shape.Value;

    /// <summary>The name at concert pitch.</summary>
    public string SoundingName => Sounding.Name;

    /// <summary>The name counted from the home clamp.</summary>
    public string ShapeName => Shape.Name;

    /// <summary>
    /// A voicing, or the reason why the clamps refuse it: a finger at or behind the ground of a held string, or, unless asked for,
    /// a finger behind a clamp that leaves the string to a lower ground.
    /// </summary>
    public static Result<Voicing> Create(Setup setup, Fretting fretting, bool allowBehindClamp = false)
    {
        if (fretting.StringCount != setup.StringCount)
        {
            return FretboardWords.FrettingForOtherStrings(fretting.StringCount, setup.StringCount);
        }

        return FirstRefusal(setup, fretting, allowBehindClamp) is { } first ? first.Fault : new Voicing(setup, fretting);
    }

    /// <summary>Reads fretting text in a setup.</summary>
    public static Result<Voicing> Parse(Setup setup, string fretting, bool allowBehindClamp = false)
    {
        if (!Fretting.Parse(fretting, setup).TryGet(out Fretting read, out Fault? fault))
        {
            return fault;
        }

        return FirstRefusal(setup, read, allowBehindClamp) is { } first
            ? first.Fault with { Column = FrettingText.ColumnOf(fretting, first.Index) }
            : new Voicing(setup, read);
    }

    /// <summary>What rings with no finger down.</summary>
    public static Voicing OpenStrings(Setup setup) => new(setup, Fretting.AllRinging(setup.StringCount));

    /// <summary>The same shape in the rig of its setup: without the full capo beneath, every finger as much lower.</summary>
    public Voicing InRig()
    {
        int lower = Setup.RigFret.Number;
        IEnumerable<StringStop> stops = Fretting.Stops.Select(stop =>
            stop.Finger is { } fret ? StringStop.At(Fret.Of(fret.Number - lower)) : stop);
        return new Voicing(Setup.Rig, Fretting.Of([.. stops]));
    }

    /// <inheritdoc/>
    public bool Equals(Voicing? other) => other is not null && Fretting == other.Fretting && Setup.Equals(other.Setup);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Voicing);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Setup, Fretting);

    /// <inheritdoc/>
    public override string ToString() => $"{Fretting} in {Setup}";

    private static SoundingString Sound(Setup setup, StringNumber number, StringStop stop)
    {
        Fret ground = setup.Ground(number);
        Pitch? pitch = stop.IsMuted ? null : setup.Tuning[number] + (stop.Finger ?? ground).Number;
        return new SoundingString(number, stop, ground, pitch);
    }

    private static (Fault Fault, int Index)? FirstRefusal(Setup setup, Fretting fretting, bool allowBehindClamp)
    {
        for (int index = 0; index < setup.StringCount; index++)
        {
            var number = StringNumber.AtIndex(index, setup.StringCount);
            if (fretting[index].Finger is { } finger && FaultOf(setup, number, finger, allowBehindClamp) is { } fault)
            {
                return (fault, index);
            }
        }

        return null;
    }

    private static Fault? FaultOf(Setup setup, StringNumber number, Fret finger, bool allowBehindClamp)
    {
        Fret ground = setup.Ground(number);
        if (ground > Fret.Nut && finger <= ground)
        {
            return FretboardWords.FingerAtOrBehindGround(number, finger, ground);
        }

        return !allowBehindClamp && setup.ClampBeyond(number, finger) is { } clamp
            ? FretboardWords.FingerBehindClamp(number, finger, clamp)
            : null;
    }

    // Names need only the order of the pitches and their classes, so an octave up keeps the lowest string a MIDI note.
    private static ImmutableArray<Pitch> FromHome(Setup setup, ImmutableArray<Pitch> pitches)
    {
        int down = setup.ShapeShift;
        int up = pitches.All(pitch => pitch.CanMove(-down)) ? 0 : Math.Sign(down) * PitchClass.Count;
        return [.. pitches.Select(pitch => pitch + (up - down))];
    }
}
