using System.Text.Json;

namespace Clampwise.Fretboard.Tests;

/// <summary>
/// Against tests/data/clamp-setups.json: 69 clamped setups whose open strings an independent script worked out. That the tunings
/// bear these names is common practice, no source.
/// </summary>
public class ClampSetupOracleTests
{
    // The data writes a tuning as its name with its letters; this is what each is called here.
    private static readonly Dictionary<string, string> s_names = new()
    {
        ["standard EADGBE"] = "standard",
        ["drop D DADGBE"] = "drop D",
        ["double drop D DADGBD"] = "double drop D",
        ["DADGAD (Dsus4)"] = "DADGAD",
        ["open D DADF#AD"] = "open D",
        ["open E EBEG#BE"] = "open E",
        ["open G DGDGBD"] = "open G",
        ["open A EAEAC#E"] = "open A",
        ["open C CGCGCE"] = "open C",
        ["open Dm DADFAD"] = "open D minor",
        ["open Em EBEGBE"] = "open E minor",
        ["open Gm DGDGBbD"] = "open G minor",
        ["open Am EAEACE"] = "open A minor",
        ["DGDGBE (G6)"] = "open G6",
        ["DGDGCD (Gsus4/sawmill)"] = "sawmill",
        ["EAEADE (Asus4)"] = "Asus4",
        ["DGDGAD (Gsus2)"] = "Gsus2",
        ["EAEABE (Asus2)"] = "Asus2",
        ["DADGBE->DADEAD"] = "Dsus2",
        ["DADDAD (D5)"] = "D5",
        ["CGDGAD (Orkney)"] = "Orkney",
        ["CGDGBD (low C)"] = "low C",
        ["CGCGCD"] = "Csus2",
        ["drop C CGDGBE? (C only) CADGBE"] = "C A D G B E",
        ["EADGBD"] = "E A D G B D",
        ["lute EADF#BE"] = "lute",
    };

    public static TheoryData<string, string, string, string> Entries()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "clamp-setups.json")));
        var rows = new TheoryData<string, string, string, string>();
        foreach (JsonElement entry in file.RootElement.GetProperty("entries").EnumerateArray())
        {
            string strings = string.Join(',', entry.GetProperty("strings").GetString()!.AsEnumerable());
            string clamp = $"{strings}@{entry.GetProperty("fret").GetInt32()}";
            rows.Add(
                $"{s_names[entry.GetProperty("base").GetString()!]} + {clamp}",
                entry.GetProperty("open").GetString()!,
                string.Join(' ', entry.GetProperty("midi").EnumerateArray().Select(midi => midi.GetInt32())),
                string.Join("; ", entry.GetProperty("equals").EnumerateArray().Select(Match).Order(StringComparer.Ordinal)));
        }

        return rows;
    }

    [Fact]
    public void No_entry_is_left_out() => Assert.Equal(69, Entries().Count);

    [Theory]
    [MemberData(nameof(Entries))]
    public void Open_strings_and_the_named_tunings_with_the_same_intervals(string text, string open, string midi, string equals)
    {
        Setup setup = Setup.Parse(text).Value;
        Assert.Equal(midi, string.Join(' ', setup.GroundPitches.Select(pitch => pitch.Midi)));
        string classes = string.Join(' ', setup.GroundPitches.Select(pitch => pitch.Class));
        Assert.Equal(open.Replace("Ab", "G#", StringComparison.Ordinal), classes);

        // The data knows one standard tuning; those that lie a few frets lower match with it and are more than it lists.
        IEnumerable<string> found = NamedTunings.WithSameIntervals(setup.GroundPitches)
            .Where(match => s_names.ContainsValue(match.Named.Name))
            .Select(match => $"{match.Named.Name} {match.SemitonesUp}");
        Assert.Equal(equals, string.Join("; ", found.Order(StringComparer.Ordinal)));
    }

    private static string Match(JsonElement equal) =>
        $"{s_names[equal.GetProperty("tuning").GetString()!]} {equal.GetProperty("semitones").GetInt32()}";
}
