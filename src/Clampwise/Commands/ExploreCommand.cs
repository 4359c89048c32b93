using System.CommandLine;
using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Plain;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise explore [SETUP] [FRETTING]</c>: a fretboard to walk on, on the screen or line by line.</summary>
internal static class ExploreCommand
{
    private static readonly TimeSpan s_patience = TimeSpan.FromSeconds(2);

    public static Command Build(Surroundings around, Option<string?> data)
    {
        var setup = new Argument<string?>("setup") { Description = "A tuning and its clamps, such as '2-4@2'; that of the next question unless given.", Arity = ArgumentArity.ZeroOrOne };
        var fretting = new Argument<string[]>("fretting") { Description = SharedOptions.FrettingWords + " All strings ring unless given.", Arity = ArgumentArity.ZeroOrMore };
        Option<bool> plain = PractiseCommands.PlainOption();
        Option<string?> key = SharedOptions.Key();
        var command = new Verb("explore", "A fretboard to explore, with both names of what you hold; with --plain line by line, for screen readers and pipes.", "explore 2-4@2 x04600", "explore --plain") { setup, fretting, key, plain, data };
        command.SetAction(parsed =>
        {
            string frets = string.Join(' ', parsed.GetValue(fretting) ?? []);
            return Read(parsed.GetValue(setup), frets, parsed.GetValue(key)).TryGet(out Start? start, out Fault? fault)
                ? Run(around, parsed.GetValue(data), start, parsed.GetValue(plain))
                : around.Refuse(fault);
        });
        return command;
    }

    // Read before anything is opened: bad input costs nothing.
    private static Result<Start> Read(string? setup, string frets, string? key)
    {
        if (setup is null)
        {
            return SharedOptions.ReadKey(key).Select(given => new Start(null, given.Key));
        }

        return frets.Length > 0
            ? SharedOptions.ReadVoicing(setup, frets, allowBehind: true, key).Select(voicing => new Start(voicing, null))
            : SharedOptions.ReadSetup(setup, key).Select(read => new Start(Voicing.OpenStrings(read), null));
    }

    private static int Run(Surroundings around, string? data, Start start, bool isPlain) =>
        OpenCommand.WithDesk(around, data, null, s_patience, (desk, screens) =>
        {
            Voicing voicing = start.Voicing ?? Voicing.OpenStrings(NextSetup(desk).In(start.Key));
            if (!PlainMode.IsChosen(around, isPlain))
            {
                return screens(frame => new ExplorerPage(frame, desk, voicing.Setup) { Holds = voicing.Fretting });
            }

            PlainMode.SayNotices(around, desk);
            return new PlainExplorer(desk, voicing, around.In, around.Out).Run() ? ExitCode.Good : ExitCode.Trouble;
        });

    // The same at every start with the same progress.
    private static Setup NextSetup(Desk desk) =>
        DailyPlanner.Plan(desk.Request() with { Seed = 0 }).All.FirstOrDefault()?.Item.Drill.Setup ?? desk.Shelf.Drills[0].Setup;

    private sealed record Start(Voicing? Voicing, MusicalKey? Key);
}
