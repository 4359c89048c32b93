using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>The wording of every fault and refusal that this layer reports.</summary>
internal static class FretboardWords
{
    public static Fault ExpectedStrings(string found, int column) =>
        new($"expected strings such as 2-4, 1,3,5 or full, found '{found}'", column + 1);

    public static Fault NoSuchString(int number, int stringCount, int? column = null) =>
        new($"there is no string {number}: strings are numbered 1, the highest, to {stringCount}", column + 1);

    public static Fault ExpectedClamp(string found) =>
        new($"expected a clamp such as 2-4@2 or full@1, found {(found.Length == 0 ? "nothing" : $"'{found}'")}", 1);

    public static Fault ExpectedFret(string found, int column) =>
        new($"expected the clamp's fret, 1 to {Fret.Last}, found {(found.Length == 0 ? "nothing" : $"'{found}'")}", column + 1);

    public static Fault TwoHomes(int column) =>
        new("only one place can be home: mark one clamp, or the tuning for the nut, with *", column + 1);

    public static Fault ExpectedTuning(string text, Fault pitchFault) =>
        new(
            $"no tuning is called '{text.Trim()}', and it does not read as pitches such as D2 A2 D3 G3 A3 D4: {pitchFault.Message}",
            pitchFault.Column);

    public static Fault StringCountOutOfRange(int count) =>
        new($"a tuning has {Tuning.FewestStrings} to {StringNumber.Most} strings, found {count}");

    public static Fault StringOutOfOrder(StringNumber number, Pitch pitch, Pitch before) =>
        new($"string {number} at {pitch} is lower than string {number.Number + 1} at {before}: "
            + "give pitches from the lowest string to the highest");

    public static Fault PitchOutOfRange(StringNumber number, Pitch pitch) =>
        new($"string {number} at {pitch} is out of range: open strings lie from {Tuning.Lowest} to {Tuning.Highest}");

    public static Fault TuningMovedAway(int semitones) =>
        new($"the tuning moved by {semitones} semitones is out of range: open strings lie from {Tuning.Lowest} to {Tuning.Highest}");

    public static Fault ClampHoldsNothing(Fret fret) => new($"the clamp at fret {fret} holds no string: name at least one");

    public static Fault ClampAtNut(StringSet strings) => new($"clamp {strings}@0 sits at the nut: a clamp goes at fret 1 or above");

    public static Fault ClampsOverlap(Clamp one, Clamp other, StringSet shared) =>
        new($"clamps {one} and {other} both hold {Spoken.Strings(shared)} at fret {one.Fret}: give them different strings or frets");

    public static Fault PartialBehindFull(Clamp partial, Clamp full) =>
        new($"clamp {partial} lies behind {full}, which stops every string: put the partial clamp above fret {full.Fret}");

    public static Fault ClampMovedOff(Clamp clamp, int frets) =>
        new($"clamp {clamp} cannot move by {frets}: it would sit at fret {clamp.Fret.Number + frets}, and frets run from 1 to {Fret.Last}");

    public static Fault ClampMovedOver(Clamp clamp, int stringCount) =>
        new($"clamp {clamp} cannot go farther: the strings are 1 to {stringCount}");

    public static Fault NoPartialHome(Setup setup) => new($"the home of {setup} is no partial clamp: put one on first");

    public static Fault NoFullCapo() => new("there is no full capo to move down");

    public static Fault FullCapoBelowNut(Fret at, int down) => new($"the full capo at fret {at} cannot move down by {down}: give at most {at}");

    public static Fault FingerMovedOff(StringNumber number, Fret finger, int frets) =>
        new($"string {number}: the finger at fret {finger} cannot move by {frets}, frets run from 1 to {Fret.Last}");

    public static Fault HomeNotAmongClamps(Clamp home) => new($"the home clamp {home} is not among the clamps");

    public static Fault WrongStringCount(int found, int expected, int column) =>
        new($"expected {expected} strings, lowest first, found {found}", column + 1);

    public static Fault ExpectedStop(string found, StringNumber number, bool isFromHome) =>
        new(
            $"string {number}: expected x, 0 or a fret{(isFromHome ? ", = beside the clamp or a negative fret behind it" : "")}, "
            + $"found '{found}'",
            1);

    public static Fault FretOffNeck(string found, StringNumber number, Fret countedFrom) =>
        new(
            $"string {number}: fret {found}{(countedFrom > Fret.Nut ? $" from the clamp at {countedFrom}" : "")} is off the neck, "
            + $"which has frets 1 to {Fret.Last}",
            1);

    public static Fault FingerAtOrBehindGround(StringNumber number, Fret finger, Fret ground) =>
        new($"string {number} is held by the clamp at {ground}: a finger at fret {finger} changes nothing, use a fret above {ground} or 0");

    public static Fault FingerBehindClamp(StringNumber number, Fret finger, Clamp clamp) =>
        new($"string {number}: a finger at fret {finger} reaches behind clamp {clamp}, very awkward and allowed only when asked for: "
            + $"use fret {clamp.Fret} or above");

    public static Fault FrettingForOtherStrings(int found, int expected) =>
        new($"the fretting is for {found} strings, the setup has {expected}");

    public static Fault HandSpanOutOfRange(double millimetres) =>
        new($"a hand of {millimetres:0.#} mm is out of range: from finger 1 to finger 4 it spans "
            + $"{Hand.NarrowestMillimetres:0} to {Hand.WidestMillimetres:0} mm");

    public static Fault ExpectedHand(string found) =>
        new($"expected small, medium, large or a span such as 98 mm, found '{found.Trim()}'", 1);

    public static Fault TooManyFingers(int fewest) => new($"{Spoken.Count(fewest, "finger")} needed");

    public static Fault ReachTooFar(double millimetres, Fret lowest, Fret highest, Hand hand) =>
        new($"reach {millimetres:0} mm, from fret {lowest} to fret {highest}: this hand spans {hand.SpanMillimetres:0.#} mm");

    public static Fault SpreadTooFar(FingerPair pair, Hand hand, Neck neck) =>
        new($"{pair.One.InWords()} at fret {pair.OneFret} and {pair.Other.InWords()} at fret {pair.OtherFret} "
            + $"lie {pair.Millimetres(neck):0} mm apart: in this hand they spread {hand.SpreadMillimetres(pair.One, pair.Other):0} mm");

    public static Fault MaxFretOutOfRange(int fret) => new($"the highest fret is {fret}: give 1 to {Fret.Last}");

    public static Fault SpanOutOfRange(int span) => new($"the span is {span} frets: give 1 to {FrettingSpace.WidestSpan}");

    public static Fault ExpectedDegree(string found) =>
        new($"expected degrees such as R 3 5 b7 9, found {(found.Trim().Length == 0 ? "nothing" : $"'{found.Trim()}'")}", 1);

    public static Fault NearHasOtherStrings(int found, int expected) =>
        new($"the voicing to stay near has {found} strings, the setup has {expected}");

    public static Fault OutsideStrings(string what, int found, int least, int most) => new($"{what} is {found}: this setup takes {least} to {most}");

    public static Fault BadDifficulty(double found) => new(FormattableString.Invariant($"the greatest difficulty is {found}: give points from 0 up, such as 3 or 4.5"));

    public static Fault PositionBeyond(Fret position, Fret highest) => new($"the position is fret {position}, but fingers go no higher than fret {highest} here");

    public static Fault NotNegative(string what, int found) => new($"{what} is {found}: give 0 or more");

    public static Fault FretOffNeckFor(string what, int fret) => new($"{what} would come to fret {fret}: the neck ends at {Fret.Last}");
}
