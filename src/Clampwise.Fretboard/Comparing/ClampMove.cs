using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Every clamp of a setup moved by the same frets and nothing else. Shapes go up or down by as many semitones only if no string is
/// free, for a free string stays where it is.
/// </summary>
public sealed class ClampMove
{
    private ClampMove(Setup from, Setup to, int frets) => (From, To, Frets) = (from, to, frets);

    /// <summary>The setup before.</summary>
    public Setup From { get; }

    /// <summary>The setup after.</summary>
    public Setup To { get; }

    /// <summary>Frets up the neck; negative toward the nut.</summary>
    public int Frets { get; }

    /// <summary>True if every shape keeps its name and sounds as many semitones higher as the clamps moved frets.</summary>
    public bool IsExact => Frets == 0 || From.FreeStrings.Count == 0;

    /// <summary>Moves the clamps; refused if one would leave the neck.</summary>
    public static Result<ClampMove> Of(Setup setup, int frets) => setup.MovedBy(frets).Select(moved => new ClampMove(setup, moved, frets));

    /// <summary>
    /// The shape with the whole hand moved along. Refused if a finger would leave the neck; a free string that rings or is stopped
    /// behind the clamps may sound what it did or be out of reach.
    /// </summary>
    public Result<Voicing> Moved(Voicing voicing)
    {
        var stops = new List<StringStop>();
        foreach (SoundingString sounding in voicing.Strings)
        {
            if (sounding.Stop.Finger is { } finger && finger.Number + Frets is < 1 or > Fret.Last)
            {
                return FretboardWords.FingerMovedOff(sounding.Number, finger, Frets);
            }

            stops.Add(sounding.Stop.Finger is { } fret ? StringStop.At(Fret.Of(fret.Number + Frets)) : sounding.Stop);
        }

        return Voicing.Create(To, Fretting.Of([.. stops]), allowBehindClamp: true);
    }

    /// <summary>What the move changes in the setup, one line a fact.</summary>
    public IEnumerable<string> Lines
    {
        get
        {
            if (IsExact)
            {
                yield return $"every string is held: shapes keep their names and sound {Spoken.Semitones(Frets)}";
                yield break;
            }

            string held = $"{Spoken.Strings(From.HeldStrings)} held, {Spoken.Semitones(Frets)}";
            yield return $"{held}; {Spoken.Strings(From.FreeStrings)} free, unchanged";
            yield return "a shape keeps its name only if no free string rings in it";
            yield return $"open strings {string.Join(' ', To.GroundNames)}: {SetupDescription.Of(To).Resemblance}";
        }
    }
}
