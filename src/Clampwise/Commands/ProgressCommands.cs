using System.CommandLine;
using Clampwise.Charts;
using Clampwise.Practice;
using Clampwise.Settings;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise weak</c> and <c>clampwise progress</c>: what needs work and why, and how practice has gone.</summary>
internal static class ProgressCommands
{
    public static Command BuildWeak(Surroundings around, Option<string?> data)
    {
        Option<bool> json = SharedOptions.Json();
        Option<bool> plain = PractiseCommands.PlainOption();
        plain.Description = "Review them line by line instead, each drawing in words.";
        Option<int?> seed = PractiseCommands.SeedOption();
        Option<bool> fresh = PractiseCommands.NewOption();
        var command = new Verb("weak", "List the weak shapes, each with its reasons.", "weak", "weak --plain") { json, plain, seed, fresh, data }
            .Excludes(plain, json)
            .Needs(seed, plain)
            .Needs(fresh, plain);
        command.SetAction(parsed => parsed.GetValue(plain)
            ? PractiseCommands.ReviewWeak(around, parsed.GetValue(data), parsed.GetValue(seed), parsed.GetValue(fresh))
            : DataCommand.WithStore(around, parsed.GetValue(data), store => PrintWeak(around, store, parsed.GetValue(json))));
        return command;
    }

    public static Command BuildProgress(Surroundings around, Option<string?> data)
    {
        Option<bool> json = SharedOptions.Json();
        var plot = new Option<string?>("--plot") { Description = "Draw it into a file instead, .svg or .png.", HelpName = "file" };
        var command = new Verb("progress", "Recall by week, time practised, what is coming due, and what is taken for what.", "progress", "progress --plot progress.svg") { plot, json, data }.Excludes(plot, json);
        command.SetAction(parsed => DataCommand.WithStore(around, parsed.GetValue(data), store => parsed.GetValue(plot) is { } file
            ? Plot(around, store, file)
            : PrintProgress(around, store, parsed.GetValue(json))));
        return command;
    }

    private static int Plot(Surroundings around, ProgressStore store, string file)
    {
        if (!ProgressPlot.FormatOf(file).TryGet(out PlotFormat format, out Fault? fault))
        {
            return around.Refuse("--plot", fault);
        }

        ProgressReport report = ReportOf(around, store);
        if (report.Days.IsEmpty)
        {
            return around.Fail(new Fault("there is nothing to plot yet: nothing was practised"));
        }

        return Disk.WriteWhole(file, stream => ProgressPlot.Write(report, stream, format)).TryGet(out _, out fault) ? ExitCode.Good : around.Fail(fault);
    }

    private static int PrintWeak(Surroundings around, ProgressStore store, bool asJson)
    {
        var repertoire = Repertoire.Of(DrillLibrary.Load(store.Folder).Drills);
        WeakShape[] all = [.. WeakShapes.Find(repertoire.Items, MemoryOf(store), Today(around, store), repertoire)];
        if (all.Length == 0 && !asJson)
        {
            around.Out.WriteLine("Nothing is weak just now.");
        }

        foreach (WeakShape weak in all)
        {
            Fretboard.Voicing voicing = weak.Item.Subject.Voicing;
            if (asJson)
            {
                JsonLines.Print(around.Out, new WeakRow(voicing.Setup.ToString(), voicing.Fretting.ToString(), voicing.ShapeName, voicing.SoundingName, weak.Item.Key.Direction.Code(), Math.Round(weak.Weight, 3), [.. weak.Reasons]));
            }
            else
            {
                around.PrintLines([$"{voicing.ShapeName,-10} {voicing.Fretting.ToHomeText(voicing.Setup),-20} {voicing.Setup}: {weak.Item.Key.Direction.Short()}: {string.Join("; ", weak.Reasons)}"], 11);
            }
        }

        return ExitCode.Good;
    }

    private static int PrintProgress(Surroundings around, ProgressStore store, bool asJson)
    {
        ProgressReport report = ReportOf(around, store);
        if (asJson)
        {
            PrintJson(around.Out, report);
            PrintMap(around.Out, store);
            return ExitCode.Good;
        }

        if (report.Days.IsEmpty)
        {
            around.Out.WriteLine("Nothing practised yet: open the program and press Enter.");
            return ExitCode.Good;
        }

        return around.PrintLines(ProgressText.Lines(report));
    }

    private static void PrintJson(TextWriter to, ProgressReport report)
    {
        foreach (WeekFigures week in report.Weeks)
        {
            JsonLines.Print(to, new WeekRow("week", week.Monday.ToString(), week.Days, Math.Round(week.Practised.TotalMinutes, 1), week.Asked, week.RightAnswers, week.Recall, week.Foreseen));
        }

        foreach (GroupFigures group in report.BySetup)
        {
            JsonLines.Print(to, GroupRow.Of("setup", group));
        }

        foreach (GroupFigures group in report.ByDirection)
        {
            JsonLines.Print(to, GroupRow.Of("direction", group));
        }

        foreach (DueDay day in report.Due)
        {
            JsonLines.Print(to, new DueRow("due", day.Day.ToString(), day.Count));
        }

        foreach (ConfusedShapes pair in report.ByShape)
        {
            JsonLines.Print(to, new ConfusedRow("confused", $"{pair.Asked}", $"{pair.Taken}", pair.Times, pair.Askings));
        }

        JsonLines.Print(to, new StillHadRow("still-had", report.StillHad.Right, report.StillHad.Of, report.StillHad.Share, report.Wish));
    }

    private static void PrintMap(TextWriter to, ProgressStore store)
    {
        foreach (MappedShape shape in ShapeMap.Of(Repertoire.Of(DrillLibrary.Load(store.Folder).Drills), MemoryOf(store)))
        {
            Fretboard.Voicing voicing = shape.Shape.Subject.Voicing;
            JsonLines.Print(to, new ShapeRow("shape", $"{shape.Shape.Drill.Id}", voicing.Setup.ToString(), voicing.Fretting.ToString(), voicing.ShapeName, voicing.SoundingName,
                Word(shape.ShapeName), Word(shape.SoundingName), Word(shape.Place), Word(shape.Hear)));
        }
    }

    private static string Word(Standing standing) => standing switch { Standing.Known => "known", Standing.Met => "met", _ => "unmet" };

    private static ProgressReport ReportOf(Surroundings around, ProgressStore store) =>
        ProgressReport.Of(store.ReadAll(), MemoryOf(store), Today(around, store));

    private static MemoryState MemoryOf(ProgressStore store) => store.LoadMemory(SettingsOf(store).Memory);

    private static PracticeDay Today(Surroundings around, ProgressStore store) =>
        new PracticeCalendar(around.Time.LocalTimeZone, SettingsOf(store).DayStart).DayOf(around.Time.GetUtcNow());

    private static PlayerSettings SettingsOf(ProgressStore store) => new SettingsKeeper(SettingsFile.In(store.Folder)).Now;
}

/// <summary>A weak shape as printed by <c>weak --json</c>.</summary>
internal sealed record WeakRow(string Setup, string Fretting, string ShapeName, string SoundingName, string Direction, double Weight, string[] Reasons);

/// <summary>A week as printed by <c>progress --json</c>.</summary>
internal sealed record WeekRow(string Kind, string Monday, int Days, double Minutes, int Asked, int Right, double? Recall, double? Foreseen);

/// <summary>What falls due on a day as printed by <c>progress --json</c>.</summary>
internal sealed record DueRow(string Kind, string Day, int Count);

/// <summary>A shape taken for another as printed by <c>progress --json</c>.</summary>
internal sealed record ConfusedRow(string Kind, string Asked, string Taken, int Times, int Askings);

/// <summary>What was still had as printed by <c>progress --json</c>, with the recall wished for.</summary>
internal sealed record StillHadRow(string Kind, int Right, int Of, double? Share, double Wished);

/// <summary>A shape on the map of shapes as printed by <c>progress --json</c>: unmet, met or known, by name, by sounding name, to place, by ear.</summary>
internal sealed record ShapeRow(
    string Kind, string Drill, string Setup, string Fretting, string ShapeName, string SoundingName, string Name, string Sounding, string Place, string Hear);

/// <summary>A setup or a direction as printed by <c>progress --json</c>.</summary>
internal sealed record GroupRow(string Kind, string Name, int Asked, int Right, int Items, int Due, double RecallTomorrow, double? UsualSeconds)
{
    public static GroupRow Of(string kind, GroupFigures group) => new(
        kind, group.Name, group.Asked, group.RightAnswers, group.Items, group.Due, Math.Round(group.RecallTomorrow, 3), group.UsualTime is { } usual ? Math.Round(usual.TotalSeconds, 1) : null);
}
