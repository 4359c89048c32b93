using System.Numerics;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// What puts a voicing before another, in points of difficulty; fewer points come first. Ease counts in full, what else is heard or
/// seen is weighed against it. The amounts are our judgement.
/// </summary>
internal static class RankingWeights
{
    /// <summary>Each string that rings from its ground.</summary>
    public const double Ringing = -0.5;

    /// <summary>Each pair of ringing strings in unison or octaves.</summary>
    public const double RingingPair = -0.25;

    /// <summary>Each string that is muted, wherever it lies; a muted inner one is harder besides.</summary>
    public const double Muted = 1.6;

    /// <summary>Each fret from the home clamp up to the lowest finger.</summary>
    public const double HandFret = 0.5;

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

    /// <summary>Two notes stand for a chord of three or more.</summary>
    public const double BareInterval = 6.0;

    private const int NotesOfChord = 3;

    /// <summary>Each semitone that a voice moves from the voicing before.</summary>
    public const double Semitone = 0.12;

    /// <summary>A string that starts or stops sounding counts as so many semitones.</summary>
    public const int SemitonesForVoice = 4;

    /// <summary>What a correct name weighs.</summary>
    public static double OfName(AcceptanceKind kind) => kind switch
    {
        AcceptanceKind.FirstReading => 0.0,
        AcceptanceKind.AnotherReading => OtherReading,
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
