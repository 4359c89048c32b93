using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>The wording of every fault and notice that this layer reports.</summary>
internal static class StorageWords
{
    public static Fault UnknownKey(string found, IEnumerable<string> known) =>
        new($"there is no key '{found}' here: expected one of {string.Join(", ", known)}");

    public static Fault MissingKey(string key) => new($"'{key}' is missing: give it a text");

    public static Fault ExpectedText(string key) => new($"'{key}' takes a text in quotes");

    public static Fault ExpectedWhole(string key, int least, int most) => new($"'{key}' takes a whole number, {least} to {most}");

    public static Fault ExpectedFlag(string key) => new($"'{key}' takes true or false");

    public static Fault ExpectedList(string key) => new($"'{key}' takes a list of texts, such as [\"see-shape-name\", \"place\"]");

    public static Fault UnknownTable(string found) => new($"there is no table '{found}' in a drill: expected [[voicing]]");

    public static Fault NoVoicing { get; } = new("the drill has no voicing: add at least one [[voicing]] with a fretting");

    public static Fault NoDirection { get; } = new("'directions' is empty: name at least one, or leave it out for all of them");

    public static Fault VoicingTwice(string fretting) => new($"{fretting} is in this drill already: each voicing stands once");

    public static Fault BadDrillFileName(Fault id) => new($"the drill's id is its file's name: {id.Message}");

    public static Fault CannotRead(string file, string why) => new($"{file} could not be read: {why}");

    public static Fault CannotWrite(string file, string why) => new($"{file} could not be written: {why}");

    public static Fault DrillIsThere(DrillId id) => new($"there is a drill '{id}' of yours already: choose another id, or ask to replace it");

    public static Fault EmptyFolderName { get; } = new("the data folder has no name: give the path of a folder");

    public static Fault NoDataFolder { get; } = new("there is no home folder to keep progress in: set HOME, or give a folder with --data");
}
