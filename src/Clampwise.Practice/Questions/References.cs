using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>What the ear is set by before a question.</summary>
internal static class References
{
    /// <summary>All strings of a setup ringing.</summary>
    public static Voicing OpenStrings(Setup setup) => Voicing.Create(setup, Fretting.AllRinging(setup.StringCount)).Value;
}
