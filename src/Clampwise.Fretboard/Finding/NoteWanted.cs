using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A note that a voicing must have at its top or bottom: in any octave, or one exact pitch.</summary>
/// <param name="Class">The pitch class.</param>
/// <param name="Exact">The pitch, if the octave counts.</param>
public readonly record struct NoteWanted(PitchClass Class, Pitch? Exact = null)
{
    /// <summary>Reads a note such as E or F#, or with an octave a pitch such as E4.</summary>
    public static Result<NoteWanted> Parse(string text)
    {
        string word = text.Trim();
        return word.Any(char.IsAsciiDigit)
            ? Pitch.Parse(word).Select(pitch => new NoteWanted(pitch.Class, pitch))
            : NoteName.Parse(word).Select(name => new NoteWanted(name.Class));
    }

    internal bool Is(int midi) => Exact is { } pitch ? pitch.Midi == midi : midi % PitchClass.Count == Class.Number;

    /// <inheritdoc/>
    public override string ToString() => Exact?.ToString() ?? Class.ToString();
}
