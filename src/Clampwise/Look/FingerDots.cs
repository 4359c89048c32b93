using Clampwise.Fretboard;

namespace Clampwise.Look;

/// <summary>Finger numbers for the dots of a fretboard.</summary>
internal static class FingerDots
{
    /// <summary>
    /// The picture with the numbers of the fingers that a hand would take; as it was where the hand cannot play it, or while it is
    /// being built under a cursor.
    /// </summary>
    public static FretboardPicture On(FretboardPicture picture, Hand hand, GlyphSet glyphs)
    {
        if (picture.Fretting is not { } fretting || picture.Cursor is not null)
        {
            return picture;
        }

        return Voicing.Create(picture.Setup, fretting, allowBehindClamp: true).Then(voicing => Fingering.Of(voicing, hand)).TryGet(out Fingering? fingering, out _)
            ? picture with { Dots = [.. fingering.ByString.Select(finger => finger.Mark() is [var mark, ..] ? mark : glyphs.Finger)] }
            : picture;
    }
}
