using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise name SETUP FRETTING</c>: both names of a voicing, and what every string does.</summary>
internal static class NameCommand
{
    public static Command Build(Surroundings around)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        Argument<string[]> fretting = SharedOptions.FrettingArgument(" - reads many from standard input, one a line.");
        Option<bool> json = SharedOptions.Json();
        Option<bool> behind = SharedOptions.Behind();
        Option<string?> key = SharedOptions.Key();
        var command = new Verb("name", "Name a voicing: its shape name, its sounding name, and what every string does.", "name 2-4@2 x04600", "name 2-4@2 '^ x 0 2 4 0 0' --json", "name 2-4@2 x04600 --key C") { setup, fretting, key, json, behind };
        command.SetAction(parsed =>
        {
            var printer = new Printer(around, parsed.GetValue(json), parsed.GetValue(behind));
            string text = string.Join(' ', parsed.GetRequiredValue(fretting));
            return SharedOptions.ReadSetup(parsed.GetRequiredValue(setup), parsed.GetValue(key)).TryGet(out Setup? read, out Fault? fault)
                ? text == "-" ? printer.PrintAll(read) : printer.PrintOne(read, text)
                : around.Refuse(fault);
        });
        return command;
    }

    private sealed class Printer(Surroundings around, bool asJson, bool allowBehind)
    {
        public int PrintOne(Setup setup, string text)
        {
            if (!Voicing.Parse(setup, text, allowBehind).TryGet(out Voicing? voicing, out Fault? fault))
            {
                return around.Refuse("fretting", fault);
            }

            if (asJson)
            {
                JsonLines.Print(around.Out, NamedVoicingRow.Of(voicing));
            }
            else
            {
                PrintInFull(voicing);
            }

            return ExitCode.Good;
        }

        public int PrintAll(Setup setup)
        {
            int number = 0;
            int bad = 0;
            while (around.In.ReadLine() is { } line)
            {
                number++;
                if (string.IsNullOrWhiteSpace(line))
                {
                    continue;
                }

                bool isGood = Voicing.Parse(setup, line, allowBehind).TryGet(out Voicing? voicing, out Fault? fault);
                bad += isGood ? 0 : 1;
                PrintLine(number, line.Trim(), voicing, fault);
            }

            if (bad > 0)
            {
                around.Error.WriteLine($"clampwise: {bad} of {Counted.Of(number, "line")} could not be read");
            }

            return bad > 0 ? ExitCode.BadInput : ExitCode.Good;
        }

        private void PrintLine(int number, string line, Voicing? voicing, Fault? fault)
        {
            if (voicing is not null && asJson)
            {
                JsonLines.Print(around.Out, NamedVoicingRow.Of(voicing));
            }
            else if (voicing is not null)
            {
                around.Out.WriteLine($"{voicing.Fretting}  shape {voicing.ShapeName}  sounds {voicing.SoundingName}");
            }
            else if (asJson)
            {
                JsonLines.Print(around.Out, new BadLineRow(number, line, fault!.ToString()));
            }
            else
            {
                around.Out.WriteLine($"line {number}: {fault}");
            }
        }

        private void PrintInFull(Voicing voicing)
        {
            string[] others = [.. voicing.Sounding.Readings.Skip(1).Select(reading => reading.Symbol.ToString())];
            around.PrintLines(
            [
                $"{voicing.Fretting} in {voicing.Setup}",
                $"from the clamp at {voicing.Setup.HomeFret}: {voicing.Fretting.ToHomeText(voicing.Setup)}",
                $"shape name     {voicing.ShapeName}",
                $"sounding name  {voicing.SoundingName}",
                .. others.Length > 0 ? [$"also read as   {string.Join(", ", others)}"] : Array.Empty<string>(),
                .. VoicingWords.Lines(voicing).Reverse(),
            ],
                15);
        }
    }
}
