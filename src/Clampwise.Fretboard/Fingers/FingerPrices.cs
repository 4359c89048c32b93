namespace Clampwise.Fretboard;

/// <summary>
/// What makes a fingering hard, in points: one point is one more finger to place. What is priced follows published work: position
/// and span of the fingers (Heijink and Meulenbroek 2002), movement along and across the neck apart (Radicioni and Lombardo),
/// spread above all, then four fingers or a barre, then skipped inner strings (Velez Vasquez et al. 2023). The amounts are our
/// judgement, set so that the cheapest fingers are those of an open data set of chord positions five times in six; so is all about
/// clamps, which no published model knows.
/// </summary>
internal static class FingerPrices
{
    /// <summary>Each finger that is placed: none, 1 to 4, T. The little finger is the weakest (common practice).</summary>
    public static readonly double[] Finger = [0.0, 1.0, 1.0, 1.1, 1.6, 1.8];

    /// <summary>A finger that lies across several strings. The first is made for it; T cannot.</summary>
    public static readonly double[] Barre = [0.0, 0.8, 3.0, 2.6, 3.0, 0.0];

    /// <summary>Each string across which a barre lies beyond the second.</summary>
    public const double BarreString = 0.3;

    /// <summary>A barre that must stop short of a ringing string next to it.</summary>
    public const double BarreEdge = 0.7;

    /// <summary>Each fret by which two neighbouring fingers lie farther apart than one fret a finger.</summary>
    public const double StretchedFret = 0.8;

    /// <summary>Each fret by which they lie closer together.</summary>
    public const double CrowdedFret = 0.15;

    /// <summary>Each string beyond two between neighbouring fingers.</summary>
    public const double AcrossString = 0.15;

    /// <summary>The whole spread of the hand; it grows with the square of the part that is used.</summary>
    public const double FullSpread = 2.5;

    /// <summary>A muted string between sounding ones.</summary>
    public const double MutedInside = 1.0;

    /// <summary>
    /// A second barre by another finger: hardly a hand plays two at once, but for the third or fourth finger flat within the first
    /// one's barre, as in the moveable A hand, which every player learns.
    /// </summary>
    public const double SecondBarre = 3.0;

    /// <summary>A finger right beside the clamp, where the bar's end is in the way: the clamp must be set back a little.</summary>
    public const double BesideClamp = 1.0;

    /// <summary>A finger behind the clamp: the hand must reach round it.</summary>
    public const double BehindClamp = 5.0;

    /// <summary>What a finger on a string costs for the clamps around it.</summary>
    public static double AroundClamps(Setup setup, StringNumber number, Fret finger) =>
        setup.ClampBeyond(number, finger) is not null ? BehindClamp
        : IsAtBarsEnd(setup, number, finger) ? BesideClamp
        : 0.0;

    /// <summary>True if a finger beside the clamp lies next to a string that it holds; a string farther off has the fret to itself.</summary>
    public static bool IsAtBarsEnd(Setup setup, StringNumber number, Fret finger) =>
        setup.ClampBeside(number, finger) is { } clamp && clamp.Strings.Strings.Any(held => Math.Abs(held.Number - number.Number) == 1);
}
