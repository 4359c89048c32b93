using System.Numerics;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>Reads packed voicings of one setup: two strings at a time, from tables of all that two strings can do.</summary>
internal sealed class RowReader
{
    private readonly int[] _ringing;
    private readonly int[] _open;
    private readonly int[] _behindBelow;
    private readonly Row[] _pairs;

    public RowReader(Setup setup)
    {
        _ringing = [.. setup.GroundPitches.Select(pitch => pitch.Midi)];
        _open = [.. setup.Tuning.Pitches.Select(pitch => pitch.Midi)];
        _behindBelow = [.. setup.Strings.Select(number => setup.ClampBeyond(number, setup.Ground(number))?.Fret.Number ?? 0)];
        RingingPairs = [.. Enumerable.Range(0, 1 << setup.StringCount).Select(CountPairs)];
        RingingPoints = [.. RingingPairs.Select((pairs, ringing) =>
            (BitOperations.PopCount((uint)ringing) * RankingWeights.Ringing) + (pairs * RankingWeights.RingingPair))];
        MutedPoints = [.. Enumerable.Range(0, 1 << setup.StringCount).Select(sounding => RankingWeights.OfMuted(sounding, setup.StringCount))];
        _pairs = StringPairs.Table(ReadString, (one, other) => one.With(other));
    }

    /// <summary>How many strings there are.</summary>
    public int StringCount => _open.Length;

    /// <summary>For each set of ringing strings, how many pairs of them are in unison or octaves.</summary>
    public int[] RingingPairs { get; }

    /// <summary>For each set of ringing strings, the points for them and their pairs.</summary>
    public double[] RingingPoints { get; }

    /// <summary>For each set of sounding strings, the points for those that are muted.</summary>
    public double[] MutedPoints { get; }

    /// <summary>MIDI numbers of the lowest and the highest sounding pitch.</summary>
    public (int Lowest, int Highest) Extremes(PackedVoicing voicing)
    {
        (int lowest, int highest) = (int.MaxValue, 0);
        for (int index = 0; index < StringCount; index++)
        {
            int midi = Midi(index, voicing.StopAt(index));
            lowest = midi < 0 ? lowest : Math.Min(lowest, midi);
            highest = Math.Max(highest, midi);
        }

        return (lowest, highest);
    }

    /// <summary>MIDI numbers of the two lowest sounding pitches; alike if only one sounds.</summary>
    public (int Lowest, int Next) LowestTwo(PackedVoicing voicing)
    {
        (int lowest, int next) = (int.MaxValue, int.MaxValue);
        for (int index = 0; index < StringCount; index++)
        {
            int midi = Midi(index, voicing.StopAt(index));
            if (midi >= 0)
            {
                (lowest, next) = midi < lowest ? (midi, lowest) : (lowest, Math.Min(next, midi));
            }
        }

        return (lowest, next == int.MaxValue ? lowest : next);
    }

    /// <summary>What a voicing sounds and where its fingers are.</summary>
    public Row Read(PackedVoicing voicing)
    {
        Row row = default;
        for (int pair = 0; pair < StringPairs.Count; pair++)
        {
            row = row.With(_pairs[StringPairs.Place(voicing, pair)]);
        }

        return row;
    }

    /// <summary>The sounding pitches, lowest string first.</summary>
    public ReadOnlySpan<Pitch> Pitches(PackedVoicing voicing, Span<Pitch> buffer)
    {
        int count = 0;
        for (int index = 0; index < StringCount; index++)
        {
            int midi = Midi(index, voicing.StopAt(index));
            if (midi >= 0)
            {
                buffer[count++] = Pitch.FromMidi(midi);
            }
        }

        return buffer[..count];
    }

    /// <summary>
    /// MIDI number of the string at a place from the lowest, 0, with a stop; negative if it is muted or there is no such string.
    /// </summary>
    public int Midi(int index, int stop) => index >= StringCount ? -1 : stop switch
    {
        0 => -1,
        1 => _ringing[index],
        _ => _open[index] + StringStop.FretOf(stop),
    };

    private Row ReadString(int index, int stop) => Midi(index, stop) < 0 ? default
        : stop == 1 ? Row.OfRinging(index)
        : Row.OfFretted(index, StringStop.FretOf(stop), StringStop.FretOf(stop) < _behindBelow[index]);

    private int CountPairs(int ringing)
    {
        int pairs = 0;
        for (int i = 0; i < _ringing.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                bool bothRing = ((ringing >> i) & (ringing >> j) & 1) == 1;
                pairs += bothRing && (_ringing[i] - _ringing[j]) % PitchClass.Count == 0 ? 1 : 0;
            }
        }

        return pairs;
    }
}
