using System.Text.RegularExpressions;
using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

/// <summary>The drills that come with the program, read from their files: only what the tests of this room need.</summary>
internal static partial class Shipped
{
    /// <summary>All of them, in their order.</summary>
    public static Drill[] Drills { get; } = [.. Files().Select(Read).OrderBy(pair => pair.Order).ThenBy(pair => $"{pair.Drill.Id}", StringComparer.Ordinal).Select(pair => pair.Drill)];

    /// <summary>All that they ask.</summary>
    public static Repertoire Everything { get; } = Repertoire.Of(Drills);

    /// <summary>The drill of a name.</summary>
    public static Drill Drill(string id) => Drills.Single(drill => $"{drill.Id}" == id);

    private static string[] Files() => Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "drills"), "*.toml");

    private static (Drill Drill, int Order) Read(string path)
    {
        string text = File.ReadAllText(path);
        Setup setup = Setup.Parse(Value("setup").Match(text).Groups[1].Value).Value;
        IEnumerable<DrillVoicing> voicings = Value("fretting").Matches(text)
            .Select(match => new DrillVoicing(Voicing.Parse(setup, match.Groups[1].Value, allowBehindClamp: true).Value));
        DrillId id = DrillId.Parse(Path.GetFileNameWithoutExtension(path)).Value;
        int order = Order().Match(text) is { Success: true } match ? int.Parse(match.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) : int.MaxValue;
        return (Practice.Drill.Create(id, Value("title").Match(text).Groups[1].Value, setup, voicings).Value, order);
    }

    private static Regex Value(string key) => new($"^{key} = \"([^\"]*)\"", RegexOptions.Multiline);

    [GeneratedRegex("^order = ([0-9]+)", RegexOptions.Multiline)]
    private static partial Regex Order();
}
