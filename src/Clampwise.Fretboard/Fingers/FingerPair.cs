namespace Clampwise.Fretboard;

/// <summary>Two fingers that must spread.</summary>
internal sealed record FingerPair(Finger One, Fret OneFret, Finger Other, Fret OtherFret)
{
    public double Millimetres(Neck neck) => neck.MillimetresBetween(OneFret, OtherFret);
}
