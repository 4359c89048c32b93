using System.Numerics;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// What puts a voicing before another, in points of difficulty; fewer points come first. Ease counts in full, what else is heard or
/// seen is weighed against it: full strums before thin ones, low on the neck before high, familiar grips before strange ones, and no
/// thirds that growl in the bass. The amounts are our judgement, set by hand and checked against hands that a teacher would give.
/// </summary>
internal static class RankingWeights
{
    /// <summary>Each string that rings from its ground.</summary>
    public const double Ringing = -0.1;

    /// <summary>Each pair of ringing strings in unison or octaves.</summary>
    public const double RingingPair = -0.2;

    /// <summary>Each string that is muted below the lowest sounding one: a strum starts above it.</summary>
    public const double MutedBelow = 1.9;

    /// <summary>Each string that is muted above the highest sounding one, where the ear looks for the tune.</summary>
    public const double MutedAbove = 2.9;

    /// <summary>Each string that is muted between sounding ones; it is harder besides.</summary>
    public const double MutedInside = 4.0;

    /// <summary>Each fret from the home clamp up to the lowest finger.</summary>
    public const double HandFret = 0.8;

    /// <summary>Frets above the home clamp that make the lower half of the neck: some 14 are clear of the body (common practice).</summary>
    public const int LowerHalf = 7;

    /// <summary>Each fret from there up to the highest finger.</summary>
    public const double UpperFret = 0.5;

    /// <summary>The fingers stand as in a grip that every player knows, counted from the home clamp.</summary>
    public const double Familiar = -1.0;

    /// <summary>The root as the lowest note.</summary>
    public const double RootInBass = -0.8;

    /// <summary>The name asked for is one of the readings, but not the first.</summary>
    public const double OtherReading = 1.0;

    /// <summary>The name asked for is right, but no usual reading.</summary>
    public const double FittingOnly = 2.0;

    /// <summary>Each tone of the name asked for that does not sound.</summary>
    public const double MissingTone = 1.5;

    /// <summary>The perfect fifth, which no one misses much.</summary>
    public const double MissingFifth = 0.3;

    /// <summary>The third of the name asked for is away, so that it is written with no3: such hands come after all others.</summary>
    public const double WithoutThird = 50.0;

    /// <summary>Two notes stand for a chord of three or more.</summary>
    public const double BareInterval = 6.0;

    private const int NotesOfChord = 3;
    private const int Fourth = 5;
    private const int ThirdsAreClearFrom = 48;
    private const double SemitonesDarker = 6.0;

    /// <summary>Each semitone that a voice moves from the voicing before.</summary>
    public const double Semitone = 0.12;

    /// <summary>A string that starts or stops sounding counts as so many semitones.</summary>
    public const int SemitonesForVoice = 4;

    /// <summary>
    /// The two lowest notes less than a fourth apart, deep down: the lower and the closer, the muddier (common practice in scoring; the
    /// line is drawn at C3).
    /// </summary>
    /// <param name="lowest">MIDI number of the lowest note.</param>
    /// <param name="next">MIDI number of the next one; the same if both sound one pitch.</param>
    public static double OfBass(int lowest, int next) =>
        next - lowest is > 0 and < Fourth && lowest < ThirdsAreClearFrom
            ? (ThirdsAreClearFrom - lowest) / SemitonesDarker * (1.0 + ((Fourth - 1 - (next - lowest)) * 0.5))
            : 0.0;

    /// <summary>The fret that a hand's place on the neck is counted from: the position that is asked for, or the home clamp.</summary>
    public static int PositionFret(Setup setup, VoicingQuery query) => query.Position?.Number ?? setup.HomeFret.Number;

    /// <summary>What strings that do not sound weigh.</summary>
    /// <param name="sounding">One bit for each sounding string, the lowest string lowest.</param>
    /// <param name="stringCount">How many strings there are.</param>
    public static double OfMuted(int sounding, int stringCount)
    {
        if (sounding == 0)
        {
            return 0.0;
        }

        int below = BitOperations.TrailingZeroCount(sounding);
        int above = stringCount - 1 - BitOperations.Log2((uint)sounding);
        int inside = stringCount - below - above - BitOperations.PopCount((uint)sounding);
        return (below * MutedBelow) + (above * MutedAbove) + (inside * MutedInside);
    }

    /// <summary>What a correct name weighs, <see cref="WithoutThird"/> aside, which hangs on the tones alone.</summary>
    public static double OfName(AcceptanceKind kind) => kind switch
    {
        AcceptanceKind.FirstReading => 0.0,
        AcceptanceKind.AnotherReading => OtherReading,
        AcceptanceKind.WithoutThird => 0.0,
        _ => FittingOnly,
    };

    /// <summary>The tones of a name that do not sound, and what they weigh.</summary>
    /// <param name="classes">The pitch classes that sound, as bits with C lowest.</param>
    /// <param name="symbol">The name.</param>
    public static (DegreeSet Missing, double Points) OfMissing(int classes, ChordSymbol symbol)
    {
        DegreeSet missing = default;
        double points = 0.0;
        foreach (ChordDegree degree in symbol.Quality.Tones)
        {
            if ((classes & (1 << (symbol.Root.Class + degree.Semitones).Number)) == 0)
            {
                missing = missing.With(degree);
                points += degree == ChordDegree.Of(5) ? MissingFifth : MissingTone;
            }
        }

        bool isBare = BitOperations.PopCount((uint)classes) < NotesOfChord && !missing.IsEmpty;
        return (missing, points + (isBare ? BareInterval : 0.0));
    }
}
