using Xunit.Abstractions;

namespace Clampwise.Theory.Tests;

/// <summary>
/// tests/data/disputed-chords.txt: the name that a player would write where several are possible; common practice, no source.
/// The list itself is proved: every name reads, and its tones are the ones that sound. Then the first readings are held to it.
/// </summary>
public class DisputedChordTests(ITestOutputHelper output)
{
    private const double FirstFloorPercent = 97.0;
    private const string NoThird = " (no3)";
    private const string NoFifth = " (no5)";

    private static readonly (string Pitches, string Name, string Why)[] s_entries =
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "disputed-chords.txt"))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split([" = ", " ; "], 3, StringSplitOptions.None))
            .Select(parts => (parts[0], parts[1], parts[2])),
    ];

    [Fact]
    public void There_are_a_hundred_at_least_and_none_twice()
    {
        Assert.True(s_entries.Length >= 100, $"{s_entries.Length} entries");
        Assert.Equal(s_entries.Length, s_entries.Select(entry => entry.Pitches).Distinct().Count());
        Assert.All(s_entries, entry => Assert.NotEmpty(entry.Why));
    }

    [Fact]
    public void Same_tones_over_the_same_bass_have_one_name() =>
        Assert.All(s_entries.GroupBy(entry => Tones(entry.Pitches)), group => Assert.Single(group.Select(entry => entry.Name).Distinct()));

    [Fact]
    public void Every_name_sounds_its_tones() => Assert.All(s_entries, entry =>
    {
        string name = entry.Name.Replace(NoThird, "", StringComparison.Ordinal).Replace(NoFifth, "", StringComparison.Ordinal);
        ChordSymbol symbol = ChordSymbol.Parse(name).Value;
        Pitch[] pitches = Pitches(entry.Pitches);
        var wanted = symbol.Tones.Select(tone => tone.Note.Class).ToHashSet();
        var sounding = pitches.Select(pitch => pitch.Class).ToHashSet();
        var foreign = sounding.Except(wanted).Where(tone => tone != symbol.BassClass);
        var missing = wanted.Except(sounding).Where(tone => !MayBeAway(entry.Name, symbol.Root.Class, tone));
        Assert.True(!foreign.Any() && !missing.Any(), $"{entry.Pitches} does not sound {entry.Name}");
        Assert.Equal(symbol.BassClass, pitches.Min().Class);
    });

    [Fact]
    public void Most_first_readings_are_the_name_that_a_player_would_write()
    {
        string[] others = [.. s_entries.Select(entry => (entry, First: Sonority.Read(Pitches(entry.Pitches)).Name))
            .Where(read => !IsFirst(read.entry.Name, Sonority.Read(Pitches(read.entry.Pitches))))
            .Select(read => $"{read.entry.Pitches} = {read.entry.Name}, read {read.First}")];
        double percent = 100.0 * (s_entries.Length - others.Length) / s_entries.Length;
        output.WriteLine($"{s_entries.Length} chords: first {percent:F1} %\n{string.Join('\n', others)}");
        Assert.InRange(percent, FirstFloorPercent, 100.0);
    }

    // A name without its third is one with the sign for it, so that it is not the name of another set of tones.
    private static bool IsFirst(string name, Sonority sonority) => sonority.First.Symbol is { } first
        && first.LikenessTo(ChordSymbol.Parse(name.Replace(NoFifth, "", StringComparison.Ordinal).Replace(NoThird, "(no3)", StringComparison.Ordinal)).Value) != ChordLikeness.OtherChord;

    private static Pitch[] Pitches(string pitches) => [.. pitches.Split(' ').Select(pitch => Pitch.Parse(pitch).Value)];

    private static bool MayBeAway(string name, PitchClass root, PitchClass tone) =>
        tone == root + 7
        || (name.EndsWith(NoThird, StringComparison.Ordinal) && (tone == root + 3 || tone == root + 4))
        || (tone == root + 2 && (name.Contains("11", StringComparison.Ordinal) || name.Contains("13", StringComparison.Ordinal)))
        || (tone == root + 5 && name.Contains("13", StringComparison.Ordinal));

    private static string Tones(string pitches)
    {
        Pitch[] all = Pitches(pitches);
        return $"{all.Min().Class}: {string.Join(' ', all.Select(pitch => $"{pitch.Class}").Distinct().Order(StringComparer.Ordinal))}";
    }
}
