using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;

namespace Clampwise.Screens.Session;

/// <summary>A card on the screen: where the clamps go, or a shape that is new.</summary>
internal static class CardView
{
    public static IReadOnlyList<Line> Draw(Card card, ScreenDesk desk, int width, int height) => card switch
    {
        Card.ClampsMove move => Clamps(move, desk, width, height),
        Card.NewShape shape => Shape(shape, desk, width, height),
        _ => throw new ArgumentOutOfRangeException(nameof(card), card, "a card that nothing draws"),
    };

    private static List<Line> Clamps(Card.ClampsMove card, ScreenDesk desk, int width, int height)
    {
        Line[] head = [.. Line.Wrap(CardWords.Do(card), width, Tone.Strong)];
        Line[] words =
        [
            .. Line.Wrap(SetupWords.Held(card.Setup), width, Tone.Held),
            .. Line.Wrap(SetupWords.Open(card.Setup), width),
            .. Line.Wrap(CardWords.Clock, width, Tone.Quiet),
        ];
        var picture = new FretboardPicture(card.Setup, Fretting.AllRinging(card.Setup.StringCount)) { Notes = VoicingNotes.Of(Voicing.OpenStrings(card.Setup)) };
        return [.. head, Line.Empty, .. desk.DrawTelling(picture, width, height - head.Length - words.Length - 1), .. words];
    }

    private static List<Line> Shape(Card.NewShape card, ScreenDesk desk, int width, int height)
    {
        Voicing voicing = card.Item.Subject.Voicing;
        string fingers = Fingering.Of(voicing, desk.Settings.Hand).TryGet(out Fingering? fingering, out _) ? $"   fingers: {fingering}" : "";
        Line[] words =
        [
            .. Line.Wrap($"{voicing.Fretting.ToHomeText(voicing.Setup)}   from the nut {voicing.Fretting}{fingers}", width),
            .. card.Like is { } like ? Line.Wrap(like.Words, width, Tone.Free) : [],
            .. card.Item.Subject.Note is { } note ? Line.Wrap(note, width, Tone.Quiet) : [],
            .. Line.Wrap(CardWords.Play, width, Tone.Quiet),
        ];
        Line[] head = [Line.Of($"{voicing.Setup}", Tone.Held).And($"   {card.Item.Drill.Title}", Tone.Quiet), .. Line.Wrap(CardWords.Names(card), width, Tone.Strong), Line.Empty];
        var picture = new FretboardPicture(voicing.Setup, voicing.Fretting) { Notes = VoicingNotes.Of(voicing) };
        return [.. head, .. desk.DrawTelling(picture, width, height - head.Length - words.Length), .. words];
    }
}
