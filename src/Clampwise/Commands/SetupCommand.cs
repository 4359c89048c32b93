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
        Option<string?> key = SharedOptions.Key();
        var beside = new Option<string?>("--beside") { Description = "Another setup to compare it with, string by string.", HelpName = "setup" };
        var move = new Option<int?>("--move") { Description = "Say what changes when every clamp moves by so many frets.", HelpName = "frets" };
        var chords = new Option<string?>("--chords") { Description = "With --beside: which of the two gives more easy voicings of these chords, such as 'E A B7'.", HelpName = "names" };
        var command = new Verb("setup", "Describe a setup: what every open string rings, what they spell, which tuning they resemble.", "setup 2-4@2", "setup 2-4@2 --beside 3-5@2 --chords 'E A B7'", "setup 2-4@2 --move 3") { setup, beside, chords, move, key, json }
            .Excludes(beside, move)
            .Needs(chords, beside);
        command.SetAction(parsed =>
        {
            if (!SharedOptions.ReadSetup(parsed.GetRequiredValue(setup), parsed.GetValue(key)).TryGet(out Setup? read, out Fault? fault))
            {
                return around.Refuse(fault);
            }

            if (parsed.GetValue(beside) is { } text)
            {
                return PrintBeside(around, read, text, parsed.GetValue(chords), parsed.GetValue(json));
            }

            return parsed.GetValue(move) is { } frets ? PrintMoved(around, read, frets, parsed.GetValue(json)) : Print(around, SetupDescription.Of(read), parsed.GetValue(json));
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
            around.Out.WriteLine($"string {number}  {setup.Spell(setup.Tuning[number]),-4} {ground,-11}  rings {setup.GroundNames[number.IndexAmong(setup.StringCount)]}");
        }

        return around.PrintLines(description.Lines);
    }

    private static int PrintBeside(Surroundings around, Setup setup, string text, string? chords, bool asJson)
    {
        if (!Setup.Parse(text).TryGet(out Setup? other, out Fault? fault))
        {
            return around.Refuse("--beside", fault);
        }

        var symbols = new List<ChordSymbol>();
        foreach (string name in chords?.Split((char[])[' ', ','], StringSplitOptions.RemoveEmptyEntries) ?? [])
        {
            if (!TypedChord.Parse(name).TryGet(out ChordSymbol? symbol, out fault))
            {
                return around.Refuse($"--chords {name}", fault);
            }

            symbols.Add(symbol);
        }

        if (chords is not null && symbols.Count == 0)
        {
            return around.Refuse("--chords", new Fault("expected names of chords, such as 'E A B7', found nothing"));
        }

        var comparison = SetupComparison.Of(setup, other);
        ChordYield? yield = chords is null ? null : ChordYield.Of(new Finder(setup), new Finder(other), symbols);
        if (asJson)
        {
            JsonLines.Print(around.Out, BesideRow.Of(comparison, yield));
            return ExitCode.Good;
        }

        return around.PrintLines(comparison.Lines.Concat(yield?.Lines ?? []));
    }

    private static int PrintMoved(Surroundings around, Setup setup, int frets, bool asJson)
    {
        if (frets == 0)
        {
            return around.Refuse("--move", new Fault("expected frets to move by, such as 2 or -1, found 0"));
        }

        if (!ClampMove.Of(setup, frets).TryGet(out ClampMove? moved, out Fault? fault))
        {
            return around.Refuse("--move", fault);
        }

        if (asJson)
        {
            JsonLines.Print(around.Out, new MovedRow(setup.ToString(), frets, moved.To.ToString(), moved.IsExact, [.. moved.To.GroundNames], [.. moved.Lines]));
            return ExitCode.Good;
        }

        return around.PrintLines(moved.Lines.Prepend(moved.To.ToString()));
    }
}
