using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Charts;

/// <summary>Works out what stands on the dots of a fretboard.</summary>
public static class DotSigns
{
    // The longest degrees are written such as b13, the usual pitch classes such as C#.
    private const int DegreeWidth = 3;
    private const int ClassWidth = 2;

    /// <summary>The picture with signs; plain where there is nothing to say, such as a shape that no hand can play.</summary>
    public static FretboardPicture On(FretboardPicture picture, DotSign sign, Hand hand)
    {
        if (sign == DotSign.Dots || picture.Fretting is not { } fretting
            || !Voicing.Create(picture.Setup, fretting, allowBehindClamp: true).TryGet(out Voicing? voicing, out _))
        {
            return picture;
        }

        StringSigns signs = sign switch
        {
            DotSign.Fingers => Fingers(voicing, hand),
            DotSign.Degrees => Tones(voicing, DegreeWidth, tone => tone.Degree.ToString(), _ => ""),
            _ => Tones(voicing, ClassWidth, tone => tone.Spelled.Name.ToString(), pitch => voicing.Setup.SoundingKey.Write(pitch.Class).ToString()),
        };
        return picture with { Signs = signs };
    }

    private static StringSigns Fingers(Voicing voicing, Hand hand) => Fingering.Of(voicing, hand).TryGet(out Fingering? fingering, out _)
        ? new StringSigns([.. fingering.ByString.Select(finger => finger.Mark())], 1, false)
        : StringSigns.None;

    // Degrees and spelling follow the first reading; without one a pitch is written as in the key and has no degree.
    private static StringSigns Tones(Voicing voicing, int width, Func<SoundingTone, string> known, Func<Pitch, string> unknown)
    {
        ImmutableArray<SoundingTone> tones = voicing.Sounding.Readings.FirstOrDefault()?.Tones ?? [];
        ImmutableArray<string> texts =
        [
            .. voicing.Strings.Select(sounding => sounding.Pitch is not { } pitch ? ""
                : tones.FirstOrDefault(tone => tone.Pitch == pitch) is var tone && !tones.IsEmpty ? known(tone) : unknown(pitch)),
        ];
        return new StringSigns(texts, Math.Max(width, texts.Max(text => text.Length)), true);
    }
}
