using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// A tuning with its clamps and the home clamp, the one that shape names and fret numbers are counted from. Clamps are kept in
/// order of fret, so that the order of writing makes no difference.
/// </summary>
public sealed class Setup : IEquatable<Setup>
{
    private readonly ImmutableArray<Fret> _grounds;
    private readonly Lazy<MusicalKey> _key;

    private Setup(Tuning tuning, ImmutableArray<Clamp> clamps, Clamp? home, MusicalKey? given = null)
    {
        _key = given is { } key ? new Lazy<MusicalKey>(key) : new Lazy<MusicalKey>(() => SuggestedKey.Of(this));
        GivenKey = given;
        Tuning = tuning;
        Clamps = clamps;
        Home = home;
        Fret Ground(StringNumber number) =>
            clamps.Where(clamp => clamp.Strings.Contains(number)).Select(clamp => clamp.Fret).DefaultIfEmpty(Fret.Nut).Max();
        _grounds = [.. tuning.Strings.Select(Ground)];
    }

    /// <summary>The open pitches from the nut.</summary>
    public Tuning Tuning { get; }

    /// <summary>The clamps, the lowest fret first.</summary>
    public ImmutableArray<Clamp> Clamps { get; }

    /// <summary>The home clamp; null if the nut is home, as it always is without clamps.</summary>
    public Clamp? Home { get; }

    /// <summary>The fret of the home clamp, or the nut.</summary>
    public Fret HomeFret => Home?.Fret ?? Fret.Nut;

    /// <summary>
    /// Semitones from what a shape is called up to what it sounds: the frets of the home clamp, and how far the whole tuning lies above
    /// the one whose letters it takes (half a step down, a D shape sounds C#).
    /// </summary>
    public int ShapeShift => HomeFret.Number + Tuning.AboveLetters;

    /// <summary>The key of the shapes, which all names are spelled in: the one given, else what the setup suggests.</summary>
    public MusicalKey Key => _key.Value;

    /// <summary>The key given, if one is.</summary>
    public MusicalKey? GivenKey { get; }

    /// <summary>The key at concert pitch.</summary>
    public MusicalKey SoundingKey => Key.Up(ShapeShift);

    /// <summary>
    /// The same setup with its names spelled in a key of the shapes, null for the one that it suggests; it equals this one, for what is
    /// played is the same.
    /// </summary>
    public Setup In(MusicalKey? key) => new(Tuning, Clamps, Home, key);

    /// <summary>A sounding pitch as the sounding key writes it.</summary>
    public SpelledPitch Spell(Pitch pitch) => SpelledPitch.Of(pitch, SoundingKey.Write(pitch.Class));

    /// <summary>A fret counted from home.</summary>
    public HomeFret FromHome(Fret fret) => Fretboard.HomeFret.Of(fret - HomeFret)!.Value;

    /// <summary>A fret counted from the nut; null if it is not on the neck.</summary>
    public Fret? FromNut(HomeFret fret) =>
        (long)fret.Number + HomeFret.Number is >= 0 and <= Fret.Last and var number ? Fret.Of((int)number) : null;

    /// <summary>How many strings there are.</summary>
    public int StringCount => Tuning.StringCount;

    /// <summary>The strings, lowest in pitch first.</summary>
    public IEnumerable<StringNumber> Strings => Tuning.Strings;

    /// <summary>The strings that a clamp holds.</summary>
    public StringSet HeldStrings => StringSet.Of(Strings.Where(IsHeld));

    /// <summary>The strings that no clamp holds.</summary>
    public StringSet FreeStrings => StringSet.All(StringCount).Except(HeldStrings);

    /// <summary>Clamps that hold no string by themselves, because higher clamps hold all of theirs.</summary>
    public IEnumerable<Clamp> IdleClamps => Clamps.Where(clamp => !clamp.Strings.Strings.Any(number => Ground(number) == clamp.Fret));

    /// <summary>A setup without clamps.</summary>
    public static Setup Open(Tuning tuning) => new(tuning, [], null);

    /// <summary>
    /// A setup of a tuning and clamps. Refused: strings that don't exist, frets beyond the neck, a partial clamp behind a full one,
    /// two clamps on one fret that overlap, a home clamp that is not among the clamps.
    /// </summary>
    /// <param name="tuning">The tuning.</param>
    /// <param name="clamps">The clamps in the order of writing.</param>
    /// <param name="home">The home clamp; without one it is the last partial clamp written, else the last clamp.</param>
    public static Result<Setup> Create(Tuning tuning, IEnumerable<Clamp> clamps, Clamp? home = null)
    {
        ImmutableArray<Clamp> written = [.. clamps];
        home ??= written.LastOrDefault(clamp => !clamp.IsFull) ?? written.LastOrDefault();
        return Make(tuning, written, home);
    }

    /// <summary>The same with the nut as home, so that shape names are sounding names.</summary>
    public static Result<Setup> CreateFromNut(Tuning tuning, IEnumerable<Clamp> clamps) => Make(tuning, [.. clamps], null);

    /// <summary>Where a string is stopped when no finger is on it: the highest clamp that holds it, else the nut.</summary>
    public Fret Ground(StringNumber number) => _grounds[number.IndexAmong(StringCount)];

    /// <summary>The ground of the string at a place in the list from the lowest string (0) to the highest.</summary>
    public Fret GroundAt(int index) => _grounds[index];

    /// <summary>The pitch of a string that rings from its ground.</summary>
    public Pitch GroundPitch(StringNumber number) => Tuning[number] + Ground(number).Number;

    /// <summary>The open strings of the setup, lowest first: what rings with no finger down.</summary>
    public ImmutableArray<Pitch> GroundPitches => [.. Strings.Select(GroundPitch)];

    /// <summary>The open strings in words, lowest first, spelled in the sounding key.</summary>
    public ImmutableArray<string> GroundNames => [.. GroundPitches.Select(pitch => $"{Spell(pitch)}")];

    /// <summary>True if a clamp holds the string.</summary>
    public bool IsHeld(StringNumber number) => Ground(number) > Fret.Nut;

    /// <summary>The highest clamp above the string's ground that a finger at this fret would lie behind, or null.</summary>
    public Clamp? ClampBeyond(StringNumber number, Fret finger) =>
        Clamps.LastOrDefault(clamp => clamp.Fret > Ground(number) && clamp.Fret > finger);

    /// <summary>A clamp above the string's ground that a finger at this fret would lie beside, or null.</summary>
    public Clamp? ClampBeside(StringNumber number, Fret finger) =>
        Clamps.LastOrDefault(clamp => clamp.Fret > Ground(number) && clamp.Fret == finger);

    /// <summary>
    /// The rig without the full capo beneath it, everything above moved down by as much: two setups with the same rig have the same
    /// shapes, and only their sounding names differ. Where home lies behind the full capo, the nut is home in the rig.
    /// </summary>
    public Setup Rig => SetupMoves.ToRig(this);

    /// <summary>The fret of the full capo beneath the rig; the nut if there is none.</summary>
    public Fret RigFret => Clamps.LastOrDefault(clamp => clamp.IsFull)?.Fret ?? Fret.Nut;

    /// <summary>Every clamp so many frets up the neck, or down; refused if one of them would leave it.</summary>
    public Result<Setup> MovedBy(int frets) => SetupMoves.Moved(this, frets);

    /// <summary>The same clamps turned round: each holds the strings at the same places counted from the other side.</summary>
    public Result<Setup> Turned() => SetupMoves.Turned(this);

    /// <summary>Reads setup text, such as <c>standard + full@1 + 1-5@3</c>.</summary>
    public static Result<Setup> Parse(string text) => SetupText.Parse(text);

    /// <inheritdoc/>
    public bool Equals(Setup? other) =>
        other is not null && Tuning.Equals(other.Tuning) && Clamps.SequenceEqual(other.Clamps) && Home == other.Home;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Setup);

    /// <inheritdoc/>
    public override int GetHashCode() => Clamps.Aggregate(HashCode.Combine(Tuning, Home), HashCode.Combine);

    /// <summary>Setup text that reads back as this setup.</summary>
    public override string ToString() => SetupText.Print(this);

    private static Result<Setup> Make(Tuning tuning, ImmutableArray<Clamp> written, Clamp? home)
    {
        if (ClampRules.FirstFault(tuning, written) is { } first)
        {
            return first.Fault;
        }

        IEnumerable<Clamp> inOrder = written.OrderBy(clamp => clamp.Fret).ThenBy(clamp => clamp.Strings.ToString(), StringComparer.Ordinal);
        return home is null || written.Contains(home)
            ? new Setup(tuning, [.. inOrder], home)
            : FretboardWords.HomeNotAmongClamps(home);
    }
}
