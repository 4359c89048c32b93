using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The wording of questions, hints and remarks.</summary>
internal static class QuestionWords
{
    public const string AskPick = "Which of these shapes do you hear?";
    public const string AskCompare = "Two voicings: the same or different? If different, which strings moved?";
    public const string Same = "the same";
    public const string OneFinger = "One finger is shown.";
    public const string ArpeggioComes = "Once more, one string after another from the lowest.";
    public const string SomeRuledOut = "Some of the choices are ruled out.";

    public static string AskName(Direction direction, Setup setup) => direction switch
    {
        Direction.SeeShapeSayShapeName => setup.Home is null ? "Which chord is this?" : "Which chord is this, counted from the home clamp?",
        Direction.SeeShapeSaySoundingName => "How does this shape sound at concert pitch?",
        Direction.HearSayName => "Which chord do you hear, at concert pitch?",
        _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "a direction in which no name is asked"),
    };

    public static string AskPlace(string name, Setup setup, bool isPlayed) =>
        $"{(isPlayed ? "Play" : "Place")} {name}{(setup.Home is null ? "" : ", counted from the home clamp")}.";

    public static string AskTranslation(string given, bool isToSounding) => isToSounding
        ? $"You play the shape {given} in this setup. How does it sound?"
        : $"{given} is to sound in this setup. Which shape do you play?";

    public static string AskChange(Voicing one, Voicing other) =>
        $"Change between {one.ShapeName} and {other.ShapeName} for one minute, and count the clean changes.";

    public static string Tones(IEnumerable<NoteName> tones, bool isFromClamp) => $"Its tones from the lowest{(isFromClamp ? ", counted from the clamp" : "")}: {string.Join(", ", tones)}.";

    public static string Root(NoteName root) => $"Its root is {root}.";

    public static string LowestNote(Voicing voicing) => $"Its lowest note is {voicing.PitchNames[voicing.Pitches.IndexOf(voicing.Pitches.Min())]}.";

    public static string HomeUp(Setup setup)
    {
        (int up, int above) = (setup.ShapeShift, setup.Tuning.AboveLetters);
        string?[] why =
        [
            setup.Home is { } home ? $"the home clamp is at fret {home.Fret}" : null,
            above != 0 ? $"the strings are tuned {Counted.Of(Math.Abs(above), "semitone")} {(above > 0 ? "up" : "down")}" : null,
        ];
        string said = string.Join(" and ", why.Where(words => words is not null));
        return $"{said[..1].ToUpperInvariant()}{said[1..]}: a shape sounds {Counted.Of(Math.Abs(up), "semitone")} {(up > 0 ? "above" : "below")} its name.";
    }

    public static string Ringing(StringSet strings) => strings.Count == 0 ? "No string rings by itself." : $"Left to ring: {Spoken.Strings(strings)}.";

    public static string ListenTo(StringSet strings) => $"Listen to {Spoken.Strings(strings)}: if anything moved, one of them did.";

    public static string Stays(StringSet kept) => kept.Count == 0
        ? "No finger stays: let them leave together, and land the lowest string first."
        : $"The finger on {Spoken.Strings(kept)} stays down.";

    public static string FingersOf(Fingering one, Fingering other) => $"First {one}; then {other}.";

    public static string Family(ChordFamily family) => family switch
    {
        ChordFamily.Major => "It is a plain major chord.",
        ChordFamily.Minor => "It is a plain minor chord.",
        ChordFamily.Power => "It has only root and fifth.",
        ChordFamily.Suspended => "It has no third: a second or a fourth stands in its place.",
        ChordFamily.Added => "It is a triad with a tone added.",
        ChordFamily.Dominant => "It has a major third and a minor seventh.",
        ChordFamily.MinorSeventh => "It has a minor third and a minor seventh.",
        ChordFamily.MajorSeventh => "It has a major seventh.",
        ChordFamily.Diminished => "Its fifth is diminished.",
        ChordFamily.Augmented => "Its fifth is augmented.",
        _ => "It is none of the common families.",
    };

    public static string? AcceptedAs(Acceptance acceptance, Sonority asked) => acceptance.Kind switch
    {
        AcceptanceKind.FirstReading => acceptance.IsOtherSpelling ? $"Right; written {asked.Name} as a rule." : null,
        AcceptanceKind.WithoutThird => $"Right, as lessons call it; its third is away, so it is written {asked.Name}.",
        AcceptanceKind.OtherBass => $"Right but for the bass: it is {asked.Name}.",
        _ => $"Right, it reads so too; the first reading is {asked.Name}.",
    };

    public static string ShapeNameTaken(string sounding) => $"Right by its shape; at concert pitch it is {sounding}.";

    public static string OtherSide(Direction direction, string asked) =>
        direction.Facts().AsksShapeName
            ? $"That is how it sounds; counted from the home clamp it is {asked}."
            : $"That is the shape's name; it sounds as {asked}.";

    public static string AnotherVoicing(Voicing placed, Voicing own) => placed.ShapeName == own.ShapeName
        ? $"Right; the drill plays it as {own.Fretting.ToHomeText(own.Setup)}."
        : $"Right; what you placed reads {placed.ShapeName} first. The drill plays it as {own.Fretting.ToHomeText(own.Setup)}.";

    public static string PlacedWas(Voicing placed) => placed.Shape.First.Quality is null
        ? $"What you placed is no chord by name: {placed.ShapeName}."
        : $"What you placed is {placed.ShapeName}.";

    public static string WhatDiffers(Voicing right, Voicing answered) =>
        StringChanges.InWords(right, answered) is [var first, .. var rest] ? char.ToUpperInvariant(first) + rest : "";

    public static string Different(StringSet moved) => moved.Count > 0 ? $"different: {Spoken.Strings(moved)}" : "different";

    public static string Changes(int count) => $"{Counted.Of(count, "change")} in a minute";
}
