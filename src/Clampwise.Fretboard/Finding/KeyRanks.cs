using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Where each chord stands when no name is asked for: the plain chords of the key, then their colours, then plain chords of other keys,
/// and altered names and clusters last of all. By bass and pitch classes, each worked out when it is first met.
/// </summary>
internal sealed class KeyRanks
{
    /// <summary>Chords from here on are no chords to look for unless they are asked for: all but those of the key and plain ones.</summary>
    public const double AskedForOnly = OutsideKey + 0.5;

    // Far enough apart that ease decides among the chords of a rank and seldom between two ranks (our judgement).
    private const double Colour = 7.0;
    private const double OutsideKey = 10.0;
    private const double OutsideColour = 13.0;
    private const double Altered = 17.0;
    private const double Nameless = 20.0;
    private const double Inversion = 5.0;
    private const double ForeignBass = 9.0;
    private const double FartherDegree = 0.2;
    private const int FlatSeventh = 10;

    private readonly float[] _points = new float[PackedVoicing.KeyCount];
    private readonly SetReadings _readings;
    private readonly MusicalKey _key;
    private readonly PitchClass _tonic;
    private readonly int _scale;
    private readonly KeyDegree[][] _degrees;

    /// <summary>The ranks of a setup in its key.</summary>
    public KeyRanks(Setup setup)
    {
        MusicalKey sounding = setup.SoundingKey;
        (_key, _readings, _tonic) = (setup.Key, new SetReadings(sounding), sounding.Tonic.Class);
        _scale = sounding.Scale.Aggregate(1 << (_tonic + FlatSeventh).Number, (bits, note) => bits | (1 << note.Class.Number));
        _degrees = [.. Enumerable.Range(0, PitchClass.Count).Select(note => KeyDegree.Of(_key).Where(degree => (_tonic + degree.Semitones).Number == note).ToArray())];
        Array.Fill(_points, float.NaN);
    }

    /// <summary>The key, counted from the home clamp.</summary>
    public MusicalKey Key => _key;

    /// <summary>The points of a bass with pitch classes.</summary>
    public float this[int key] => float.IsNaN(_points[key]) ? _points[key] = (float)(Chord(key, isSaid: false).Points + Bass(key).Points) : _points[key];

    /// <summary>What the points are for.</summary>
    public IEnumerable<Price> Reasons(int key) => new[] { Chord(key, isSaid: true), Bass(key) }.Where(price => price.Points > 0.0);

    /// <summary>True for a plain chord of the key or a colour of one, over any bass.</summary>
    public bool IsOfKey(int key) => _readings.First(key) is var reading && (Plain(reading) ?? Coloured(reading, key)) is not null;

    /// <summary>The degree whose plain chord over its root this is; null for any other.</summary>
    public KeyDegree? PlainDegree(int key) => Plain(_readings.First(key)) is { } degree && Bass(key).Points == 0.0 ? degree : null;

    /// <summary>The degree that this colours over its root; null for any other.</summary>
    public KeyDegree? ColouredDegree(int key)
    {
        FirstReading reading = _readings.First(key);
        return Bass(key).Points == 0.0 && Plain(reading) is null ? Coloured(reading, key) : null;
    }

    // Points are wanted by the thousand, words for what is shown.
    private Price Chord(int key, bool isSaid)
    {
        FirstReading reading = _readings.First(key);
        return reading.Quality is not { } quality ? new Price("no chord by name", Nameless)
            : reading.Kind is not (SonorityKind.Chord or SonorityKind.PowerChord) ? new Price("two notes alone", Nameless)
            : Plain(reading) is { } plain ? new Price(isSaid ? $"{plain.Roman} of {_key}" : "", Place(plain))
            : Coloured(reading, key) is { } colour ? new Price(isSaid ? $"colour of {colour.Roman} in {_key}" : "", Colour + Place(colour) + More(quality))
            : quality.IsPlainTriad ? new Price(isSaid ? $"outside {_key}" : "", OutsideKey)
            : IsColour(quality) ? new Price(isSaid ? $"outside {_key}" : "", OutsideColour + More(quality))
            : new Price("an altered chord", Altered);
    }

    private Price Bass(int key)
    {
        FirstReading reading = _readings.First(key);
        return reading.Quality is not { } quality || reading.Bass == reading.Root ? new Price("", 0.0)
            : quality.Tones.Any(tone => reading.Root + tone.Semitones == reading.Bass) ? new Price("an inversion", Inversion)
            : new Price("a foreign bass", ForeignBass);
    }

    private KeyDegree? Plain(FirstReading reading) => reading is { Kind: SonorityKind.Chord, Quality: { } quality } && quality.IsPlainTriad
        ? Degrees(reading).FirstOrDefault(degree => degree.IsMinor == (quality.Triad == TriadKind.Minor))
        : null;

    private KeyDegree? Coloured(FirstReading reading, int key) =>
        reading is { Kind: SonorityKind.Chord or SonorityKind.PowerChord, Quality: { } quality } && IsColour(quality) && (PackedVoicing.OfKey(key).Classes & ~_scale) == 0
            ? Degrees(reading).FirstOrDefault(degree => quality.Triad is not (TriadKind.Major or TriadKind.Minor) || degree.IsMinor == (quality.Triad == TriadKind.Minor))
            : null;

    private KeyDegree[] Degrees(FirstReading reading) => _degrees[reading.Root.Number];

    private static double Place(KeyDegree degree) => degree.Roman switch
    {
        "I" or "i" => 0.0,
        "IV" or "V" or "iv" or "v" => FartherDegree,
        "bVII" or "iii" => 3 * FartherDegree,
        _ => 2 * FartherDegree,
    };

    // Each tone beyond four makes a chord more of a colour and less of use; so does a third that is away.
    private static double More(ChordQuality quality) =>
        (Math.Max(0, quality.Tones.Length - 4) * 1.5) + (quality.Triad is TriadKind.Major or TriadKind.Minor ? 0.0 : 0.8);

    private static bool IsColour(ChordQuality quality) =>
        IsUnaltered(quality) && quality.Added.Count <= 1 && quality.Added.All(tone => tone.Alteration == 0) && quality.Triad switch
        {
            TriadKind.Major or TriadKind.Minor or TriadKind.Power => true,
            TriadKind.Suspended2 => quality.Tones.Length == 3,
            TriadKind.Suspended4 => quality.Tones.Length == 3 || (quality.Tones.Length == 4 && quality.Seventh == SeventhKind.Minor),
            _ => false,
        };

    private static bool IsUnaltered(ChordQuality quality) => quality.Altered.IsEmpty && quality.Omitted.IsEmpty;
}
