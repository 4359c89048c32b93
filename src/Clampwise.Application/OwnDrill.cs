using Clampwise.Fretboard;
using Clampwise.Practice;

namespace Clampwise.Application;

/// <summary>The drill of kept voicings that the player has for each setup.</summary>
public static class OwnDrill
{
    /// <summary>Own drills come after the shipped ones.</summary>
    public const int Order = 1000;

    /// <summary>The own drill of the voicing's setup, with the voicing in it.</summary>
    public static Drill With(IEnumerable<Drill> drills, Voicing voicing)
    {
        DrillId id = DrillId.Parse($"kept-{Slug(voicing.Setup)}").Value;
        Drill drill = drills.FirstOrDefault(known => known.Id == id) ?? new Drill(id, $"Kept: {voicing.Setup}", voicing.Setup, []);
        return drill.Voicings.Any(kept => kept.Voicing.Equals(voicing)) ? drill : drill with { Voicings = drill.Voicings.Add(new DrillVoicing(voicing)) };
    }

    // Letters and digits of the setup text, all else as single hyphens.
    private static string Slug(Setup setup)
    {
        char[] signs = [.. setup.ToString().ToLowerInvariant().Select(sign => char.IsAsciiLetterOrDigit(sign) ? sign : '-')];
        return string.Join('-', new string(signs).Split('-', StringSplitOptions.RemoveEmptyEntries));
    }
}
