using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise drills [ID]</c>: the drills at hand, or the voicings of one.</summary>
internal static class DrillsCommand
{
    public static Command Build(Surroundings around, Option<string?> data)
    {
        var id = new Argument<string?>("id") { Description = "One drill, to list its voicings.", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> json = SharedOptions.Json();
        Option<string?> key = SharedOptions.Key();
        var command = new Verb("drills", "List the drills, or the voicings of one with both their names.", "drills", "drills first-six --json", "drills first-six --key G") { id, key, data, json }
            .Needs(key, id);
        command.SetAction(parsed =>
        {
            if (!DataFolder.Find(parsed.GetValue(data), around.Variable).TryGet(out DataFolder? folder, out Fault? fault))
            {
                return around.Refuse(fault);
            }

            if (!SharedOptions.ReadKey(parsed.GetValue(key)).TryGet(out GivenKey? given, out fault))
            {
                return around.Refuse(fault);
            }

            var library = DrillLibrary.Load(folder);
            int code = parsed.GetValue(id) is { } wanted
                ? PrintOne(around, library, wanted, given.Key, parsed.GetValue(json))
                : PrintAll(around, library, parsed.GetValue(json));
            foreach (Fault unread in library.Faults)
            {
                around.Complain(unread.ToString(), ExitCode.BadInput);
            }

            return library.Faults.IsEmpty ? code : ExitCode.BadInput;
        });
        return command;
    }

    /// <summary>What is said of a drill that is not there.</summary>
    internal static Fault NoSuch(string wanted, IEnumerable<Drill> drills)
    {
        string[] known = [.. drills.Select(drill => drill.Id.ToString())];
        return new Fault($"there is no drill '{wanted}'{Nearest.Hint(wanted, known)}{(Nearest.To(wanted, known) is null ? $": use one of {string.Join(", ", known)}" : "")}");
    }

    private static int PrintAll(Surroundings around, DrillLibrary library, bool asJson)
    {
        foreach (DrillSheet sheet in library.Sheets)
        {
            Drill drill = sheet.Drill;
            if (asJson)
            {
                JsonLines.Print(around.Out, new DrillRow(drill.Id.ToString(), drill.Title, drill.Setup.ToString(), drill.Voicings.Length, drill.Note, sheet.Origin == DrillOrigin.Own));
            }
            else
            {
                around.PrintLines([$"{drill.Id,-18} {drill.Setup,-32} {drill.Voicings.Length,2}  {drill.Title}"], 19);
            }
        }

        return ExitCode.Good;
    }

    private static int PrintOne(Surroundings around, DrillLibrary library, string wanted, MusicalKey? key, bool asJson)
    {
        if (library.Drills.FirstOrDefault(drill => drill.Id.ToString() == wanted) is not { } drill)
        {
            return around.Refuse(NoSuch(wanted, library.Drills));
        }

        if (!asJson)
        {
            around.Out.WriteLine($"{drill.Title}: {drill.Setup}");
        }

        foreach (DrillVoicing listed in drill.Voicings)
        {
            Voicing voicing = listed.Voicing.In(key);
            if (asJson)
            {
                JsonLines.Print(around.Out, NamedVoicingRow.Of(voicing));
            }
            else
            {
                around.PrintLines([$"{voicing.Fretting,-14} shape {voicing.ShapeName,-10} sounds {voicing.SoundingName,-10} {listed.Note}".TrimEnd()], 15);
            }
        }

        return ExitCode.Good;
    }
}

/// <summary>A drill as printed by <c>drills --json</c>.</summary>
internal sealed record DrillRow(string Id, string Title, string Setup, int Voicings, string? Note, bool Own);
