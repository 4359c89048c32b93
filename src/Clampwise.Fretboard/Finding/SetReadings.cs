using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// The first reading of each bass with each set of pitch classes, read when first asked for, as if the notes lay close together.
/// Reads in a key at concert pitch.
/// </summary>
internal sealed class SetReadings(MusicalKey musicalKey)
{
    private readonly FirstReading?[] _first = new FirstReading?[PackedVoicing.KeyCount];

    /// <summary>The first reading for a key of <see cref="PackedVoicing.Key"/>.</summary>
    public FirstReading First(int key)
    {
        (int bass, int classes) = PackedVoicing.OfKey(key);
        Span<Pitch> buffer = stackalloc Pitch[PitchClass.Count];
        return _first[key] ??= FirstReading.Of(Pitches(bass, classes, buffer), musicalKey);
    }

    /// <summary>A bass with pitch classes above it, close together.</summary>
    public static ReadOnlySpan<Pitch> Pitches(int bass, int classes, Span<Pitch> buffer)
    {
        const int LowestMidi = 48;
        int count = 0;
        for (int above = 0; above < PitchClass.Count; above++)
        {
            if (((classes >> ((bass + above) % PitchClass.Count)) & 1) == 1)
            {
                buffer[count++] = Pitch.FromMidi(LowestMidi + bass + above);
            }
        }

        return buffer[..count];
    }
}
