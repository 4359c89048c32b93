namespace Clampwise.Commands;

/// <summary>How a part of the program is.</summary>
internal enum Health
{
    /// <summary>As it should be.</summary>
    Ok,

    /// <summary>Worth a look: it works, though not in full.</summary>
    Look,

    /// <summary>It does not work.</summary>
    Wrong,
}

/// <summary>What a look at one part found.</summary>
/// <param name="Part">The part.</param>
/// <param name="Health">How it is.</param>
/// <param name="Words">What was found, one line.</param>
/// <param name="Mend">How to mend it; null if there is nothing to mend.</param>
internal sealed record DoctorFinding(string Part, Health Health, string Words, string? Mend = null)
{
    public static DoctorFinding Ok(string part, string words) => new(part, Health.Ok, words);

    public static DoctorFinding Look(string part, string words, string mend) => new(part, Health.Look, words, mend);

    public static DoctorFinding Wrong(string part, string words, string mend) => new(part, Health.Wrong, words, mend);
}
