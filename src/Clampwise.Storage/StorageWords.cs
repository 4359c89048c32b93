using System.Globalization;
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

    public static Fault NoSuchCode(string found, IEnumerable<string> codes) =>
        new($"there is no '{found}' here: expected one of {string.Join(", ", codes)}");

    public static Fault FieldMissing(string field) => new($"the field '{field}' is missing");

    public static Fault BadField(string field) => new($"the field '{field}' holds something that does not belong there");

    public static Fault TooLong(Field field) => new(string.Create(CultureInfo.InvariantCulture, $"the field '{field.Name}' is longer than {field.Most} characters"));

    public static Fault OutOfBounds(Field field) => new(string.Create(CultureInfo.InvariantCulture, $"the field '{field.Name}' lies out of its bounds, {field.Least} to {field.Most}"));

    public static Fault LineTooLong(int most) => new($"the line is longer than {most} bytes");

    public static Fault BadText { get; } = new("a text of the line is no Unicode text, in UTF-8 or in its escapes");

    public const string RestUnreadable = "the file cannot be read from here on";

    public static Fault ImportStopped(int added, Fault why) =>
        new(added == 0 ? why.Message : $"{why.Message}; {Counted.Of(added, "new entry", "new entries")} before that {(added == 1 ? "was" : "were")} taken over and kept");

    public static Fault BadChecksum { get; } = new("the line is damaged: its checksum is missing or does not fit");

    public static Fault NotAnObject { get; } = new("expected a JSON object");

    public static Fault NotJson(long column) => new("the line does not read as JSON from here on", (int)Math.Min(column, int.MaxValue));

    public static Fault IsReadOnly { get; } = new("the data folder is open to read only, so nothing is kept");

    public static Fault InUse(string folder) =>
        new($"{folder} is in use by another copy of the program: it is open to read only here, so answers are not kept");

    public static Fault CannotWriteFolder(string folder, string why) =>
        new($"{folder} cannot be written to, so answers are not kept: {why}");

    public const string TransactionLost = "the database did not keep a transaction";

    public static Fault NewerEntry(int found, int known) =>
        new($"the entry was written in version {found} by a newer program; this one knows version {known}: update the program");

    public static Fault NewerFolder(string folder) =>
        new($"{folder} was written by a newer version of the program, so nothing in it is touched: update the program, or give another folder with --data");

    public static string DatabaseGivenUp(string why) =>
        $"The database failed ({why}). Everything answered is safe in the journal, and the database is made anew at the next start.";

    public static string DatabaseUnusable(string why) =>
        $"The database cannot be made ({why}). The journal is used alone: everything is kept, only more slowly.";

    public static string DatabaseKeptAside(string where, string why) =>
        $"The database was damaged ({why}). It was put aside as {where} and made anew from the journal.";

    public static string OldDatabaseKept(string where) =>
        $"The old database could not be read to its end. It was put aside as {where}, in case the journal lacks something.";

    public static string RebuiltAfterStop { get; } =
        "The computer stopped while the program was open. The database was made anew from the journal, to be sure of it.";

    public static string JournalHasBadLines(int count, int first) =>
        $"{Counted.Of(count, "line")} of the journal {(count == 1 ? "is" : "are")} damaged and left out, the first is line {first}.";

    public static string TornEnd(long bytes, string where) =>
        $"The last line of the journal was not written to its end, as happens when the program is stopped by force: {Counted.Of(bytes, "byte")} put aside as {where}. No answer that had its verdict is lost by that.";

    public static string JournalKeptAside(string where, int saved) =>
        $"The journal did not end as a journal does. It was put aside as {where}; {Counted.Of(saved, "entry", "entries")} could be read and stand in the new one.";

    public static string SavedFromDatabase(int count) =>
        $"{Counted.Of(count, "entry", "entries")} that the journal had lost {(count == 1 ? "was" : "were")} brought back from the database.";

    public static string BackupOffered(string name, int more) =>
        $"The backup {name} holds {Counted.Of(more, "entry", "entries")} more than there {(more == 1 ? "is" : "are")} now: bring them back with 'clampwise data restore'.";

    public static string JournalUnreadable(string why) => $"The journal could not be read ({why}): what was practised before is not taken into account.";

    public static string BackupFailed(string why) => $"The backup of the day could not be made: {why}.";

    public static string WrongLength(long found, long closed) => $"it has {found} bytes, and had {closed} when it was closed";

    public static Fault NothingToBackUp { get; } = new("nothing has been practised yet, so there is nothing to back up");

    public static Fault NoJournal(string folder) => new($"there is no journal in {folder}: give the data folder of the other machine, or a copy of it");

    public static string DatabaseDiffers(int missing, int other, int more) =>
        $"The database differs from the journal: {missing} missing, {other} different, {more} that only it has. 'clampwise data rebuild' makes it anew, and first brings back into the journal what only it has.";

    public static string ClockWasAhead(int items, DateTimeOffset last) =>
        $"{Counted.Of(items, "item")} {(items == 1 ? "was" : "were")} answered under a clock that was ahead, as late as {last:yyyy-MM-dd}: those answers count for nothing until then. Practise: {(items == 1 ? "it comes" : "they come")} as if not asked then, and asking anew mends it.";

    public static string BackupDamaged(string name, int read, int expected) => $"The backup {name} is damaged: {read} of {expected} entries can be read.";

    public static Fault NoBackup(string? name, IReadOnlyCollection<string> there) => new(
        name is null ? "there is no backup that can be read" : $"there is no backup '{name}': {(there.Count == 0 ? "none was made yet" : "there are " + string.Join(", ", there))}");

    public static Fault SettingsAreThere(string path) => new($"{path} is there already, and is left as it is: delete it first, or change what stands in it");

    public static Fault CannotEdit(FileFault first) => new($"not saved, since the file does not read: mend it first (line {first.Line}: {first.Message})");

    public static Fault CannotPlace(string key, string written) => new($"not saved: write {key} = {written} into the file yourself");
}
