using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What each string of a voicing sounds, spelled as its first reading wants it: the third of B is D#, never Eb.</summary>
internal static class SpelledStrings
{
    /// <summary>One text for each string, lowest first: <c>D#4 (the third)</c>, without degrees <c>D#4</c>, or <c>muted</c>.</summary>
    public static ImmutableArray<string> Of(Voicing voicing, bool withDegrees)
    {
        ImmutableArray<SoundingTone>? tones = voicing.Sounding.Readings.FirstOrDefault()?.Tones;
        ImmutableArray<string> names = voicing.PitchNames;
        int next = 0;
        var texts = ImmutableArray.CreateBuilder<string>(voicing.Strings.Length);
        foreach (SoundingString sounding in voicing.Strings)
        {
            texts.Add(sounding.Pitch is null ? PracticeWords.Muted
                : withDegrees && tones is { } read ? $"{names[next]} ({VoicingWords.Say(read[next].Degree)})" : names[next]);
            next += sounding.Pitch is null ? 0 : 1;
        }

        return texts.MoveToImmutable();
    }

    /// <summary>The names of the tones of what sounds, each once, from the lowest up.</summary>
    public static IEnumerable<NoteName> Names(Sonority sonority) => sonority.Readings is [var first, ..]
        ? first.Tones.OrderBy(tone => tone.Pitch).Select(tone => tone.Spelled.Name).Distinct()
        : sonority.Pitches.Order().Select(pitch => sonority.Spell(pitch.Class)).Distinct();
}
