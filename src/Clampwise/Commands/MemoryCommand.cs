using System.CommandLine;
using Clampwise.Practice;
using Clampwise.Settings;
using Clampwise.Storage;

namespace Clampwise.Commands;

/// <summary><c>clampwise memory</c>: the weights of the memory model, fitted to the player's own log, and taken back.</summary>
internal static class MemoryCommand
{
    public static Command Build(Surroundings around, Option<string?> data)
    {
        var fit = new Option<bool>("--fit") { Description = $"Fit the model to your answers now; it takes {WeightFit.LeastAnswers} of them." };
        var undo = new Option<bool>("--undo") { Description = "Take the last choice of weights back." };
        Option<bool> json = SharedOptions.Json();
        Verb command = new Verb("memory", "Say which weights the memory model uses; fit them to your answers, or take that back.", "memory", "memory --fit", "memory --undo") { fit, undo, data, json }.Excludes(fit, undo);
        command.SetAction(parsed => DataCommand.WithStore(around, parsed.GetValue(data), store =>
            parsed.GetValue(undo) ? Undo(around, store, parsed.GetValue(json))
            : parsed.GetValue(fit) ? Fit(around, store, parsed.GetValue(json))
            : Print(around, LogReading.Weights(store.ReadAll()), null, parsed.GetValue(json))));
        return command;
    }

    /// <summary>
    /// Fits the weights if the log has come to <see cref="WeightFit.LeastAnswers"/> or doubled since they were last chosen, and says
    /// what came of it. Going through the whole log is left out as long as the number of answers cannot have doubled.
    /// </summary>
    /// <param name="around">Where it is said.</param>
    /// <param name="store">The log.</param>
    /// <param name="before">Answers when the program was opened.</param>
    /// <param name="now">Answers by now.</param>
    public static void FitIfDue(Surroundings around, ProgressStore store, int before, int now)
    {
        if (Doublings(now) > Doublings(before) && !store.IsReadOnly && WeightFit.IsDue(store.ReadAll()))
        {
            Fit(around, store, asJson: false);
        }
    }

    private static int Doublings(int answers) =>
        answers < WeightFit.LeastAnswers ? 0 : 1 + (int)Math.Log2((double)answers / WeightFit.LeastAnswers);

    private static int Print(Surroundings around, FsrsWeights? own, string? words, bool asJson)
    {
        if (asJson)
        {
            JsonLines.Print(around.Out, new MemoryRow(own is not null, [.. (own ?? FsrsWeights.Default).Values], words));
            return ExitCode.Good;
        }

        if (words is not null)
        {
            return around.PrintLines([words]);
        }

        return around.PrintLines(
        [
            own is null ? "The memory model (FSRS-6) uses its published weights." : "The memory model (FSRS-6) uses weights fitted to your answers.",
            string.Join(", ", (own ?? FsrsWeights.Default).Values),
            .. WeightsInWords.Of(new Fsrs(own ?? FsrsWeights.Default, FsrsSettings.Usual)),
        ]);
    }

    private static int Fit(Surroundings around, ProgressStore store, bool asJson)
    {
        IReadOnlyList<LogEntry> entries = store.ReadAll();
        FsrsWeights? own = LogReading.Weights(entries);
        FsrsWeights inUse = own ?? FsrsWeights.Default;
        FitReport report = WeightFit.Fit(LogReading.Attempts(entries), inUse, new SettingsKeeper(SettingsFile.In(store.Folder)).Now.Memory);
        if (report.Answers < WeightFit.LeastAnswers)
        {
            return Print(around, own, report.Words, asJson);
        }

        LogEntry entry = report.ToEntry(new EntryId(Guid.NewGuid()), around.Time.GetUtcNow(), inUse);
        return store.Append(entry) is { } fault ? around.Fail(fault) : Print(around, LogReading.Weights([.. entries, entry]), report.Words, asJson);
    }

    private static int Undo(Surroundings around, ProgressStore store, bool asJson)
    {
        IReadOnlyList<LogEntry> entries = store.ReadAll();
        if (LogReading.UndoWeights(entries, new EntryId(Guid.NewGuid()), around.Time.GetUtcNow()) is not { } entry)
        {
            return Print(around, LogReading.Weights(entries), "There is nothing to take back: no weights were chosen since.", asJson);
        }

        return store.Append(entry) is { } fault ? around.Fail(fault) : Print(around, LogReading.Weights([.. entries, entry]), entry.Why, asJson);
    }
}

/// <summary>The weights in use as printed by <c>memory --json</c>.</summary>
internal sealed record MemoryRow(bool Fitted, double[] Weights, string? Words);
