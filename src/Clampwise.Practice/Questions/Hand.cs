using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>A plain test of whether a hand can play a voicing.</summary>
internal static class Hand
{
    private const int MostFingers = 4;
    private const int MostSpan = 4;

    /// <summary>A fault if the fingers span more than four frets, or more than four would be needed with one barre at the lowest fret.</summary>
    public static Fault? FaultOf(Voicing voicing)
    {
        int[] frets = [.. voicing.Fretting.Stops.Where(stop => stop.IsFretted).Select(stop => stop.Finger!.Value.Number)];
        if (frets.Length == 0)
        {
            return null;
        }

        int lowest = frets.Min();
        int span = frets.Max() - lowest;
        int fingers = 1 + frets.Count(fret => fret > lowest);
        return span >= MostSpan ? PracticeWords.TooWide(span + 1) : fingers > MostFingers ? PracticeWords.TooManyFingers(fingers) : null;
    }
}
