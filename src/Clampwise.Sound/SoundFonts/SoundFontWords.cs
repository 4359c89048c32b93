using Clampwise.Theory;

namespace Clampwise.Sound.SoundFonts;

/// <summary>The wording of every fault with SoundFont files.</summary>
internal static class SoundFontWords
{
    public static Fault NotASoundFont { get; } = new("this is not a SoundFont: it does not start with RIFF and sfbk (choose a file that ends in .sf2)");

    public static Fault NoPresets { get; } = new("the SoundFont has no presets");

    public static Fault CutShort(long bytes) => new($"the SoundFont is cut short: its last {bytes} bytes are missing, fetch it again");

    public static Fault PartMissing(string part) => new($"the SoundFont lacks the part {part}: it is damaged");

    public static Fault TablesTooLarge(long bytes, long most) =>
        new($"the SoundFont's tables take {bytes / 1_000_000} MB, where at most {most / 1_000_000} MB make sense: it is damaged");

    public static Fault TableOfWrongSize(string table, long bytes, int record) =>
        new($"the SoundFont's table {table} has {bytes} bytes, which are not whole records of {record}: it is damaged");

    public static Fault TablePointsNowhere(string table, int record) =>
        new($"record {record} of the SoundFont's table {table} points to something that is not there: it is damaged");

    public static Fault TooManyRegions(string preset, long count, long most) =>
        new($"preset '{preset}' is made of {count} regions, where at most {most} make sense: choose another");

    public static Fault NoSamples(string preset) => new($"preset '{preset}' has no sample that can be played: choose another");

    public static Fault TooLarge(string preset, long samples, long most) =>
        new($"preset '{preset}' needs {samples / 1_000_000} million samples, more than the {most / 1_000_000} million that are read: choose a smaller one");

    public static Fault NoSuchPreset(string asked, string some) => new($"no preset is called '{asked}': there are {some}");

    public static Fault CannotRead(string path, string reason) => new($"the SoundFont {path} can't be read: {reason}");

    public static Fault Damaged(string reason) => new($"the SoundFont is damaged: {reason}");
}
