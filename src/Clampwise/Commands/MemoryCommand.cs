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
        var command = new Command("memory", "Say which weights the memory model uses; fit them to your answers, or take that back.") { fit, undo };
        command.SetAction(parsed => DataCommand.WithStore(around, parsed.GetValue(data), store =>
            parsed.GetValue(undo) ? Undo(around, store)
            : parsed.GetValue(fit) ? Fit(around, store)
            : Print(around, store)));
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
            Fit(around, store);
        }
    }

    private static int Doublings(int answers) =>
        answers < WeightFit.LeastAnswers ? 0 : 1 + (int)Math.Log2((double)answers / WeightFit.LeastAnswers);

    private static int Print(Surroundings around, ProgressStore store)
    {
        FsrsWeights? own = LogReading.Weights(store.ReadAll());
        around.Out.WriteLine(own is null ? "The memory model (FSRS-6) uses its published weights." : "The memory model (FSRS-6) uses weights fitted to your answers.");
        around.Out.WriteLine(string.Join(", ", (own ?? FsrsWeights.Default).Values));
        return ExitCode.Good;
    }

    private static int Fit(Surroundings around, ProgressStore store)
    {
        IReadOnlyList<LogEntry> entries = store.ReadAll();
        FsrsWeights inUse = LogReading.Weights(entries) ?? FsrsWeights.Default;
        FitReport report = WeightFit.Fit(LogReading.Attempts(entries), inUse, new SettingsKeeper(SettingsFile.In(store.Folder)).Now.Memory);
        around.Out.WriteLine(report.Words);
        return report.Answers < WeightFit.LeastAnswers ? ExitCode.Good : Keep(around, store, report.ToEntry(new EntryId(Guid.NewGuid()), around.Time.GetUtcNow(), inUse));
    }

    private static int Undo(Surroundings around, ProgressStore store)
    {
        if (LogReading.UndoWeights(store.ReadAll(), new EntryId(Guid.NewGuid()), around.Time.GetUtcNow()) is not { } entry)
        {
            around.Out.WriteLine("There is nothing to take back: the weights are the published ones.");
            return ExitCode.Good;
        }

        around.Out.WriteLine(entry.Why);
        return Keep(around, store, entry);
    }

    private static int Keep(Surroundings around, ProgressStore store, LogEntry entry)
    {
        if (store.Append(entry) is not { } fault)
        {
            return ExitCode.Good;
        }

        around.Error.WriteLine($"clampwise: {fault}");
        return ExitCode.Trouble;
    }
}
