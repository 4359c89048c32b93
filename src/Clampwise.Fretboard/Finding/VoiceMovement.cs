using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// How far the voices move between two voicings, string by string (each string is taken as a voice, as players hear their own hands).
/// </summary>
/// <param name="Semitones">Semitones that strings sounding in both move, added up.</param>
/// <param name="Staying">Strings that sound the same pitch in both.</param>
/// <param name="StartingOrStopping">Strings that sound in one alone.</param>
public readonly record struct VoiceMovement(int Semitones, int Staying, int StartingOrStopping)
{
    /// <summary>The movement as one number: a string that starts or stops counts as four semitones (our judgement).</summary>
    public int Total => Semitones + (StartingOrStopping * RankingWeights.SemitonesForVoice);

    /// <summary>The movement from one voicing to another with as many strings. Throws for another number of strings.</summary>
    public static VoiceMovement Between(Voicing from, Voicing to)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(to.Strings.Length, from.Strings.Length);
        VoiceMovement movement = default;
        for (int index = 0; index < from.Strings.Length; index++)
        {
            movement = movement.With(Midi(from.Strings[index].Pitch), Midi(to.Strings[index].Pitch));
        }

        return movement;
    }

    /// <summary>In words: <c>voices move three semitones, two stay, one starts or stops</c>.</summary>
    public override string ToString()
    {
        string verb = StartingOrStopping == 1 ? "starts or stops" : "start or stop";
        string change = StartingOrStopping == 0 ? "" : $", {Spoken.Number(StartingOrStopping)} {verb}";
        return $"voices move {Spoken.Count(Semitones, "semitone")}, {Spoken.Number(Staying)} {(Staying == 1 ? "stays" : "stay")}{change}";
    }

    /// <summary>The movement with one more string; MIDI numbers, negative where it is muted.</summary>
    internal VoiceMovement With(int from, int to) => (from >= 0, to >= 0) switch
    {
        (true, true) => this with { Semitones = Semitones + Math.Abs(to - from), Staying = Staying + (to == from ? 1 : 0) },
        (false, false) => this,
        _ => this with { StartingOrStopping = StartingOrStopping + 1 },
    };

    internal static int Midi(Pitch? pitch) => pitch?.Midi ?? -1;
}
