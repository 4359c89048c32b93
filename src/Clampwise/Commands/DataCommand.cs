using System.CommandLine;
using Clampwise.Practice;
using Clampwise.Settings;
using Clampwise.Storage;
using Clampwise.Streams;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise data ...</c>: care for the data: check, backup, restore, export, import, merge, rebuild.</summary>
internal static class DataCommand
{
    public static Command Build(Surroundings around, Option<string?> data)
    {
        var command = new Verb("data", "Check, back up, restore, export, import, merge or rebuild your data.", "data check", "data export answers.jsonl");
        command.Add(Simple(around, data, "check", "Go through journal, database and backups, and say what is wrong.", Check));
        command.Add(Simple(around, data, "backup", "Make the backup of the day.", BackUp));
        command.Add(Simple(around, data, "rebuild", "Make the database anew from the journal.", Rebuild));
        command.Add(Restore(around, data));
        command.Add(Export(around, data));
        command.Add(Import(around, data));
        command.Add(Merge(around, data));
        return command;
    }

    private static Verb Simple(Surroundings around, Option<string?> data, string name, string words, Func<Surroundings, ProgressStore, bool, int> run)
    {
        Option<bool> json = SharedOptions.Json();
        var command = new Verb(name, words, $"data {name}", $"data {name} --json") { data, json };
        command.SetAction(parsed => WithStore(around, parsed.GetValue(data), store => run(around, store, parsed.GetValue(json))));
        return command;
    }

    private static Verb Restore(Surroundings around, Option<string?> data)
    {
        var name = new Argument<string?>("name") { Description = "The backup; the newest good one unless given.", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> json = SharedOptions.Json();
        var command = new Verb("restore", "Add what a backup holds and the data lack; nothing answered since is lost.", "data restore", "data restore 2026-03-02-000001.jsonl.gz") { name, json, data };
        command.SetAction(parsed => WithStore(around, parsed.GetValue(data), store =>
            DataRestore.Find(new Backups(store.Folder, around.Time), parsed.GetValue(name))
                .Then(backup => DataRestore.Run(store, backup))
                .TryGet(out ImportReport? report, out Fault? fault) ? Report(around, report, parsed.GetValue(json)) : around.Refuse(fault)));
        return command;
    }

    private static Verb Export(Surroundings around, Option<string?> data)
    {
        var file = new Argument<string?>("file") { Description = "The file to write; standard output unless given.", Arity = ArgumentArity.ZeroOrOne };
        var csv = new Option<bool>("--csv") { Description = "A table for spreadsheets instead of JSON lines." };
        var command = new Verb("export", "Write all entries as JSON lines, or as a table for spreadsheets.", "data export answers.jsonl", "data export answers.csv --csv") { file, csv, data };
        command.SetAction(parsed => WithStore(around, parsed.GetValue(data), store =>
        {
            Action<IEnumerable<LogEntry>, Stream> form = parsed.GetValue(csv) ? LogExport.WriteCsv : LogExport.WriteJsonLines;
            if (parsed.GetValue(file) is { } path)
            {
                return LogExport.WriteFile(store.ReadAll(), path, form) is { } fault ? around.Fail(fault) : ExitCode.Good;
            }

            using var bytes = new MemoryStream();
            form(store.ReadAll(), bytes);
            CleanWriter.WriteForm(around.Out, System.Text.Encoding.UTF8.GetString(bytes.ToArray()));
            return ExitCode.Good;
        }));
        return command;
    }

    private static Verb Import(Surroundings around, Option<string?> data)
    {
        var file = new Argument<string>("file") { Description = "JSON lines: an export, a backup or a journal." };
        Option<bool> json = SharedOptions.Json();
        var command = new Verb("import", "Take over the entries of a file; those that are there already count once.", "data import answers.jsonl") { file, json, data };
        command.SetAction(parsed => WithStore(around, parsed.GetValue(data), store =>
            LogImport.File(store, parsed.GetRequiredValue(file), around.BadLine, around.Progress).TryGet(out ImportReport? report, out Fault? fault) ? Report(around, report, parsed.GetValue(json)) : around.Refuse(fault)));
        return command;
    }

    private static Verb Merge(Surroundings around, Option<string?> data)
    {
        var folder = new Argument<string>("folder") { Description = "The data folder of another machine, or a copy of it; it is only read." };
        Option<bool> json = SharedOptions.Json();
        var command = new Verb("merge", "Take over everything answered on another machine; in any order the same result.", "data merge /media/stick/clampwise") { folder, json, data };
        command.SetAction(parsed => WithStore(around, parsed.GetValue(data), store =>
            LogImport.Folder(store, new DataFolder(Path.GetFullPath(parsed.GetRequiredValue(folder))), around.BadLine, around.Progress).TryGet(out ImportReport? report, out Fault? fault)
                ? Report(around, report, parsed.GetValue(json))
                : around.Refuse(fault)));
        return command;
    }

    /// <summary>Opens the store for one command; its notices go to standard error.</summary>
    internal static int WithStore(Surroundings around, string? dataFolder, Func<ProgressStore, int> run)
    {
        Result<ProgressStore> opened = DataFolder.Find(dataFolder, around.Variable).Then(folder => ProgressStore.Open(folder, around.Time));
        if (!opened.TryGet(out ProgressStore? store, out Fault? fault))
        {
            return around.Fail(fault);
        }

        using (store)
        {
            string[] atFirst = [.. store.Notices];
            Say(around, atFirst);
            int code = run(store);
            Say(around, store.Notices.Except(atFirst));
            return code;
        }
    }

    private static void Say(Surroundings around, IEnumerable<string> notices)
    {
        foreach (string notice in notices)
        {
            around.Error.WriteLine($"clampwise: {notice}");
        }
    }

    private static int Check(Surroundings around, ProgressStore store, bool asJson)
    {
        CheckReport report = DataCheck.Run(store, new Backups(store.Folder, around.Time), around.Time.GetUtcNow());
        if (asJson)
        {
            JsonLines.Print(around.Out, new CheckRow(report.JournalEntries, report.DatabaseEntries, report.GoodBackups, [.. report.Problems]));
            return report.IsGood ? ExitCode.Good : ExitCode.Trouble;
        }

        around.PrintLines(
        [
            $"in the journal {Counted.Of(report.JournalEntries, "entry", "entries")}, in the database {report.DatabaseEntries?.ToString() ?? "unknown"}; good backups: {report.GoodBackups}",
            .. report.Problems,
        ]);
        return report.IsGood ? ExitCode.Good : ExitCode.Trouble;
    }

    private static int BackUp(Surroundings around, ProgressStore store, bool asJson)
    {
        if (!store.BackUp(new Backups(store.Folder, around.Time)).TryGet(out Backup? backup, out Fault? fault))
        {
            return around.Fail(fault);
        }

        Print(around, asJson, new CountRow(backup.Count, backup.Name), $"{backup.Name}: {Counted.Of(backup.Count, "entry", "entries")}");
        return ExitCode.Good;
    }

    private static int Rebuild(Surroundings around, ProgressStore store, bool asJson)
    {
        if (!store.Rebuild().TryGet(out int count, out Fault? fault))
        {
            return around.Fail(fault);
        }

        // Worked out now, so that the next start need not go through the whole log.
        store.LoadMemory(new SettingsKeeper(SettingsFile.In(store.Folder)).Now.Memory);
        Print(around, asJson, new CountRow(count, null), $"{Counted.Of(count, "entry", "entries")} in the database");
        return ExitCode.Good;
    }

    private static int Report(Surroundings around, ImportReport report, bool asJson)
    {
        foreach (FileFault fault in report.Faults)
        {
            around.BadLine(fault);
        }

        Print(around, asJson, new ImportRow(report.Read, report.Added, report.Bad), $"{Counted.Of(report.Read, "entry", "entries")} read, {report.Added} of them new{(report.Bad > 0 ? $"; {Counted.Of(report.Bad, "line")} could not be read" : "")}");
        return report.Bad == 0 ? ExitCode.Good : ExitCode.BadInput;
    }

    // As they are met: of a long file there may be many.
    private static void BadLine(this Surroundings around, FileFault fault)
    {
        around.Error.WriteLine($"clampwise: {fault}");
        if (around.IsJson)
        {
            JsonLines.Print(around.Out, new BadEntryRow(fault.Line, fault.Column, fault.Message));
        }
    }

    private static void Progress(this Surroundings around, ImportProgress progress) =>
        around.Error.WriteLine($"clampwise: {progress.Percent} % of the file, {Counted.Of(progress.Read, "entry", "entries")} read");

    private static void Print<T>(Surroundings around, bool asJson, T row, string words) where T : notnull
    {
        if (asJson)
        {
            JsonLines.Print(around.Out, row);
        }
        else
        {
            around.Out.WriteLine(words);
        }
    }
}

/// <summary>What <c>data check --json</c> prints.</summary>
internal sealed record CheckRow(int JournalEntries, int? DatabaseEntries, int GoodBackups, string[] Problems);

/// <summary>What <c>data backup --json</c> and <c>data rebuild --json</c> print.</summary>
internal sealed record CountRow(int Entries, string? Backup);

/// <summary>What <c>data import --json</c>, <c>merge</c> and <c>restore</c> print.</summary>
internal sealed record ImportRow(int Read, int Added, int Bad);

/// <summary>A line that could not be read, printed by the same before their own row.</summary>
internal sealed record BadEntryRow(int Line, int? Column, string Error);
