namespace Clampwise.Theory.Tests;

/// <summary>
/// tests/data/disputed-chords.txt: the name that a player would write where several are possible; common practice, no source.
/// Here the list itself is proved: every name reads, and its tones are the ones that sound.
/// </summary>
public class DisputedChordTests
{
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
        Pitch[] pitches = [.. entry.Pitches.Split(' ').Select(pitch => Pitch.Parse(pitch).Value)];
        var wanted = symbol.Tones.Select(tone => tone.Note.Class).ToHashSet();
        var sounding = pitches.Select(pitch => pitch.Class).ToHashSet();
        var foreign = sounding.Except(wanted).Where(tone => tone != symbol.BassClass);
        var missing = wanted.Except(sounding).Where(tone => !MayBeAway(entry.Name, symbol.Root.Class, tone));
        Assert.True(!foreign.Any() && !missing.Any(), $"{entry.Pitches} does not sound {entry.Name}");
        Assert.Equal(symbol.BassClass, pitches.Min().Class);
    });

    private static bool MayBeAway(string name, PitchClass root, PitchClass tone) =>
        tone == root + 7
        || (name.EndsWith(NoThird, StringComparison.Ordinal) && (tone == root + 3 || tone == root + 4))
        || (tone == root + 2 && (name.Contains("11", StringComparison.Ordinal) || name.Contains("13", StringComparison.Ordinal)))
        || (tone == root + 5 && name.Contains("13", StringComparison.Ordinal));

    private static string Tones(string pitches)
    {
        Pitch[] all = [.. pitches.Split(' ').Select(pitch => Pitch.Parse(pitch).Value)];
        return $"{all.Min().Class}: {string.Join(' ', all.Select(pitch => $"{pitch.Class}").Distinct().Order(StringComparer.Ordinal))}";
    }
}
