namespace Clampwise.Application;

/// <summary>What every player should be told about hands, ears and strings: offered, never a diagnosis.</summary>
public static class Cautions
{
    // Listening level: WHO/ITU H.870. The rest is common practice, no source.
    public static IReadOnlyList<string> All { get; } =
    [
        "Hands: warm up, press lightly, rest about five minutes in each twenty-five. Stop at pain, numbness or tingling; if it stays, ask a doctor, a physiotherapist or another qualified clinician. Your teacher's word on posture goes before ours.",
        "Ears: play at a moderate volume (80 dB(A) for at most 40 hours a week for adults, 75 for children: WHO/ITU H.870). If your ears ring or feel dull, see an audiologist.",
        "Strings and clamp: no more clamp pressure than a clean tone needs. Slacken a string before you retune it, face away while tuning up, replace rusty strings, and take the clamp off after playing.",
    ];
}
