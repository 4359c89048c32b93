using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Sound.Performing;

/// <summary>Playing to a beat.</summary>
public static class InTime
{
    /// <summary>Clicks alone, the first of each bar accented.</summary>
    public static Performance Metronome(Tempo tempo, int beats, int beatsPerBar) => Performance.OfClicks(
        Enumerable.Range(0, beats).Select(beat => new Click(tempo.Beat * beat, beat % beatsPerBar == 0)));

    /// <summary>Voicings strummed one after another for some beats each, after a count-in, over the metronome's clicks.</summary>
    public static Performance Changes(
        IReadOnlyList<(Voicing Voicing, int Beats)> changes, Tempo tempo, PlayingStyle style, int countIn = 4, int beatsPerBar = 4)
    {
        Performance result = Metronome(tempo, countIn + changes.Sum(change => change.Beats), beatsPerBar);
        int beat = countIn;
        foreach ((Voicing voicing, int beats) in changes)
        {
            Performance strum = Perform.Strum(voicing, StrumDirection.Down, style with { Ring = tempo.Beat * beats });
            result = strum.Under(result, tempo.Beat * beat);
            beat += beats;
        }

        return result;
    }
}
