using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

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
        var kept = new DrillVoicing(voicing);
        Result<Drill> drill = drills.FirstOrDefault(known => known.Id == id) is { } own ? own.With(kept) : Drill.Create(id, $"Kept: {voicing.Setup}", voicing.Setup, [kept]);
        return drill.Value;
    }

    // Letters and digits of the setup text, all else as single hyphens.
    private static string Slug(Setup setup)
    {
        char[] signs = [.. setup.ToString().ToLowerInvariant().Select(sign => char.IsAsciiLetterOrDigit(sign) ? sign : '-')];
        return string.Join('-', new string(signs).Split('-', StringSplitOptions.RemoveEmptyEntries));
    }
}
