using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise setup SETUP</c>: what the open strings ring, what they spell and which tuning they resemble.</summary>
internal static class SetupCommand
{
    public static Command Build(Surroundings around)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        Option<bool> json = SharedOptions.Json();
        var beside = new Option<string?>("--beside") { Description = "Another setup to compare it with, string by string.", HelpName = "setup" };
        var move = new Option<int>("--move") { Description = "Say what changes when every clamp moves by so many frets.", HelpName = "frets" };
        var chords = new Option<string?>("--chords") { Description = "With --beside: which of the two gives more easy voicings of these chords, such as 'E A B7'.", HelpName = "names" };
        var command = new Command("setup", "Describe a setup: what every open string rings, what they spell, which tuning they resemble.") { setup, beside, chords, move, json };
        command.SetAction(parsed =>
        {
            if (!Setup.Parse(parsed.GetRequiredValue(setup)).TryGet(out Setup? read, out Fault? fault))
            {
                return around.Refuse("setup", fault);
            }

            if (parsed.GetValue(beside) is { } text)
            {
                return PrintBeside(around, read, text, parsed.GetValue(chords));
            }

            return parsed.GetValue(move) is int frets and not 0 ? PrintMoved(around, read, frets) : Print(around, SetupDescription.Of(read), parsed.GetValue(json));
        });
        return command;
    }

    private static int Print(Surroundings around, SetupDescription description, bool asJson)
    {
        if (asJson)
        {
            JsonLines.Print(around.Out, SetupRow.Of(description));
            return ExitCode.Good;
        }

        Setup setup = description.Setup;
        around.Out.WriteLine($"{setup}, home at {(setup.HomeFret == Fret.Nut ? "the nut" : $"fret {setup.HomeFret}")}");
        foreach (StringNumber number in setup.Strings.Reverse())
        {
            string ground = setup.IsHeld(number) ? $"held at {setup.Ground(number)}" : "free";
            around.Out.WriteLine($"string {number}  {setup.Tuning[number],-4} {ground,-11}  rings {setup.GroundNames[number.IndexAmong(setup.StringCount)]}");
        }

        return PrintLines(around, description.Lines);
    }

    private static int PrintBeside(Surroundings around, Setup setup, string text, string? chords)
    {
        if (!Setup.Parse(text).TryGet(out Setup? other, out Fault? fault))
        {
            return around.Refuse("--beside", fault);
        }

        IEnumerable<string> lines = SetupComparison.Of(setup, other).Lines;
        if (chords is null)
        {
            return PrintLines(around, lines);
        }

        var symbols = new List<ChordSymbol>();
        foreach (string name in chords.Split((char[])[' ', ','], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!ChordSymbol.Parse(name).TryGet(out ChordSymbol? symbol, out fault))
            {
                return around.Refuse($"--chords {name}", fault);
            }

            symbols.Add(symbol);
        }

        return PrintLines(around, lines.Concat(ChordYield.Of(new Finder(setup), new Finder(other), symbols).Lines));
    }

    private static int PrintMoved(Surroundings around, Setup setup, int frets) =>
        ClampMove.Of(setup, frets).TryGet(out ClampMove? moved, out Fault? fault)
            ? PrintLines(around, moved.Lines.Prepend(moved.To.ToString()))
            : around.Refuse("--move", fault);

    private static int PrintLines(Surroundings around, IEnumerable<string> lines)
    {
        int width = OutputLines.Width(around);
        foreach (string line in lines.SelectMany(line => OutputLines.Wrap(line, width)))
        {
            around.Out.WriteLine(line);
        }

        return ExitCode.Good;
    }
}
