using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>Steps of help for each kind of question, the mildest first.</summary>
internal static class Hints
{
    public static ImmutableArray<Hint> ForName(Sonority asked, Voicing subject, bool isHeard, ImmutableArray<Choice> choices, Random random)
    {
        ChordSymbol symbol = asked.First.Symbol!;
        var root = new Hint(QuestionWords.Root(symbol.Root));
        Hint last = choices.Length > 2 ? RuleOut(choices, subject, random) : new Hint(QuestionWords.Family(ChordFamilies.Of(symbol.Quality)));
        return isHeard ? [Arpeggio, root, last] : [root, new Hint(QuestionWords.Tones(SpelledStrings.Names(asked), IsFromClamp(asked, subject))), last];
    }

    public static ImmutableArray<Hint> ForPlacing(Voicing subject)
    {
        StringSet ringing = Where(subject, s => s.Stop.IsRinging);
        StringSet low = StringSet.Of(subject.Strings.Where(s => s.Stop.IsFretted).Take(1).Select(s => s.Number));
        return
        [
            new Hint(QuestionWords.Tones(SpelledStrings.Names(subject.Shape), IsFromClamp(subject.Shape, subject))),
            new Hint(QuestionWords.Ringing(ringing)) { Shown = ringing.Union(Where(subject, s => s.Stop.IsMuted)) },
            new Hint(QuestionWords.OneFinger) { Shown = ringing.Union(Where(subject, s => s.Stop.IsMuted)).Union(low) },
        ];
    }

    public static ImmutableArray<Hint> ForPicking(Voicing subject, ImmutableArray<Choice> choices, Random random) =>
        [Arpeggio, new Hint(QuestionWords.LowestNote(subject)), RuleOut(choices, subject, random)];

    // Worded alike whether anything moved or not, or it would give the answer away.
    public static ImmutableArray<Hint> ForComparing(Voicing one, StringSet moved, Random random)
    {
        StringNumber[] sounding = [.. one.Strings.Where(s => s.Pitch is not null).Select(s => s.Number)];
        random.Shuffle(sounding);
        StringNumber[] two = [.. moved.Strings.Take(1).Concat(sounding).Distinct().Take(2).Order()];
        return [Arpeggio, new Hint(QuestionWords.ListenTo(StringSet.Of(two)))];
    }

    /// <summary>What stays where it is in a change, then the fingers of both shapes; none if the hand cannot play them.</summary>
    public static ImmutableArray<Hint> ForChanging(Voicing from, Voicing to, Hand hand) =>
        Fingering.Of(from, hand).TryGet(out Fingering? one, out _) && Fingering.Of(to, hand).TryGet(out Fingering? other, out _)
            ? [new Hint(QuestionWords.Stays(Kept(one, other))), new Hint(QuestionWords.FingersOf(one, other))]
            : [];

    private static StringSet Kept(Fingering one, Fingering other) => StringSet.Of(one.Voicing.Setup.Strings.Where(number =>
        one.Voicing.Fretting[number] is { IsFretted: true } stop && stop == other.Voicing.Fretting[number] && one.FingerOn(number) == other.FingerOn(number)));

    public static ImmutableArray<Hint> ForTranslating(Setup setup, ChordSymbol expected) =>
        [new Hint(QuestionWords.HomeUp(setup)), new Hint(QuestionWords.Root(expected.Root))];

    // The strings sound otherwise than a shape is named: what is counted from the clamp says so.
    private static bool IsFromClamp(Sonority asked, Voicing subject) => asked == subject.Shape && subject.Setup.ShapeShift != 0;

    private static Hint Arpeggio { get; } = new(QuestionWords.ArpeggioComes) { IsArpeggio = true };

    private static Hint RuleOut(ImmutableArray<Choice> choices, Voicing subject, Random random) =>
        new(QuestionWords.SomeRuledOut) { RuledOut = Choices.RuledOut(choices, subject, random) };

    private static StringSet Where(Voicing voicing, Func<SoundingString, bool> test) =>
        StringSet.Of(voicing.Strings.Where(test).Select(s => s.Number));
}
