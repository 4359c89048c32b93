using System.CommandLine;
using System.Reflection;
using System.Runtime.InteropServices;
using Clampwise.Settings;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise doctor</c>: looks at everything that the program stands on, and says what is wrong and how to mend it.</summary>
internal static class DoctorCommand
{
    private const int HealthWidth = 6;
    private const int PartWidth = 11;

    public static Command Build(Surroundings around, Option<string?> data)
    {
        Option<bool> json = SharedOptions.Json();
        var command = new Verb("doctor", "Look at terminal, sound, data, settings and drills, and say what is wrong and how to mend it. Exit code 1 if something is wrong.", "doctor", "doctor --json") { json, data };
        command.SetAction(parsed =>
        {
            DoctorFinding[] findings = [.. Examine(around, parsed.GetValue(data))];
            foreach (DoctorFinding finding in findings)
            {
                Print(around, finding, parsed.GetValue(json));
            }

            return findings.Any(finding => finding.Health == Health.Wrong) ? ExitCode.Trouble : ExitCode.Good;
        });
        return command;
    }

    private static IEnumerable<DoctorFinding> Examine(Surroundings around, string? dataFolder)
    {
        yield return DoctorFinding.Ok("program", $"clampwise {Version}, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.RuntimeIdentifier}");
        bool hasFolder = DataFolder.Find(dataFolder, around.Variable).TryGet(out DataFolder? folder, out Fault? fault);
        SettingsFile? file = folder is null ? null : SettingsFile.In(folder);
        SettingsReading read = file?.Load() ?? SettingsReading.Usual;
        IEnumerable<DoctorFinding> ofFolder = hasFolder
            ? [.. DoctorData.LastFailure(folder!), .. DoctorData.Settings(file!, read), .. DoctorData.Folder(folder!, around.Time), .. DoctorData.Drills(folder!)]
            : [DoctorFinding.Wrong("data", fault!.Message, "name a folder with --data, or set HOME")];
        foreach (DoctorFinding finding in (IEnumerable<DoctorFinding>)[.. DoctorTerminal.Examine(around, read.Settings), .. DoctorSound.Examine(around, read.Settings.Sound), .. ofFolder])
        {
            yield return finding;
        }
    }

    private static string Version => typeof(DoctorCommand).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "of unknown version";

    private static void Print(Surroundings around, DoctorFinding finding, bool asJson)
    {
        if (asJson)
        {
            JsonLines.Print(around.Out, FindingRow.Of(finding));
            return;
        }

        const int Indent = HealthWidth + PartWidth + 2;
        around.PrintLines(
        [
            $"{Word(finding.Health).PadRight(HealthWidth)} {finding.Part.PadRight(PartWidth)} {finding.Words}",
            .. finding.Mend is { } mend ? [$"{new string(' ', Indent)}to mend it: {mend}"] : Array.Empty<string>(),
        ],
            Indent);
    }

    /// <summary>The word for a state.</summary>
    internal static string Word(Health health) => health.ToString().ToLowerInvariant();
}

/// <summary>A finding as printed by <c>doctor --json</c>.</summary>
internal sealed record FindingRow(string Part, string State, string Words, string? Mend)
{
    public static FindingRow Of(DoctorFinding finding) => new(finding.Part, DoctorCommand.Word(finding.Health), finding.Words, finding.Mend);
}
