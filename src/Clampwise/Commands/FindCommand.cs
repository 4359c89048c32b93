using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise find SETUP</c>: the voicings of a setup that fit, best first; or how many frettings there are.</summary>
internal static class FindCommand
{
    public static Command Build(Surroundings around)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        var asked = new FindOptions();
        Option<string> hand = SharedOptions.HandOption();
        Option<bool> json = SharedOptions.Json();
        var command = new Verb("find", "Find voicings of a setup, the best first: every one that a hand can finger is looked at.", "find 2-4@2 --shape Dsus4", "find 2-4@2 --sounding E --unbroken --limit 5", "find 2-4@2 --count --fingers 3") { setup, hand, json };
        asked.AddTo(command, hand);
        command.SetAction(parsed =>
        {
            if (!Setup.Parse(parsed.GetRequiredValue(setup)).TryGet(out Setup? read, out Fault? fault))
            {
                return around.Refuse("setup", fault);
            }

            if (asked.IsCount(parsed))
            {
                return asked.Counter(parsed).TryGet(out FrettingCounter? counter, out fault) ? PrintCount(around, counter, read, parsed.GetValue(json)) : around.Refuse(fault);
            }

            if (!Hand.Parse(parsed.GetValue(hand)!).TryGet(out Hand? player, out fault))
            {
                return around.Refuse("--hand", fault);
            }

            Result<FindResult> found = asked.Space(parsed, read).Then(space => asked.Query(parsed, read).Then(query => new Finder(read, player, null, space).Find(query)));
            return found.TryGet(out FindResult? result, out fault) ? Print(around, read, result, parsed.GetValue(json)) : around.Refuse(fault);
        });
        return command;
    }

    private static int PrintCount(Surroundings around, FrettingCounter counter, Setup setup, bool asJson)
    {
        long count = counter.Count(setup);
        if (asJson)
        {
            JsonLines.Print(around.Out, new FrettingCountRow(setup.ToString(), count));
        }
        else
        {
            around.Out.WriteLine(count);
        }

        return ExitCode.Good;
    }

    private static int Print(Surroundings around, Setup setup, FindResult result, bool asJson)
    {
        if (!asJson)
        {
            around.Out.WriteLine($"{Counted.Of(result.Total, "voicing")} in {setup}{(result.Voicings.Length < result.Total ? $", the best {result.Voicings.Length}" : "")}");
        }

        foreach (FoundVoicing found in asJson ? result.Voicings : [])
        {
            JsonLines.Print(around.Out, FoundRow.Of(found));
        }

        foreach (string line in asJson ? [] : Lines(result.Voicings, OutputLines.Width(around)))
        {
            around.Out.WriteLine(line);
        }

        return ExitCode.Good;
    }

    // Columns no wider than what stands in them: on a narrow line the room goes to what speaks for a voicing.
    private static IEnumerable<string> Lines(IReadOnlyList<FoundVoicing> all, int width)
    {
        (string Fretting, string Shape, string Sounds)[] texts = [.. all.Select(found => ($"{found.Voicing.Fretting}", found.Voicing.ShapeName, found.Voicing.SoundingName))];
        int fretting = texts.Select(text => text.Fretting.Length).DefaultIfEmpty().Max();
        int shape = texts.Select(text => text.Shape.Length).DefaultIfEmpty().Max();
        int sounds = texts.Select(text => text.Sounds.Length).DefaultIfEmpty().Max();
        return all.Zip(texts, (found, text) =>
        {
            string names = $"{text.Fretting.PadRight(fretting)}  shape {text.Shape.PadRight(shape)}  sounds {text.Sounds.PadRight(sounds)}  ";
            return names + found.SummaryWithin(width - names.Length);
        });
    }
}

/// <summary>How many frettings there are as printed by <c>find --count --json</c>.</summary>
internal sealed record FrettingCountRow(string Setup, long Frettings);

/// <summary>A voicing as printed by <c>find --json</c>: its weights add up to its score, and fewer points come first.</summary>
internal sealed record FoundRow(
    string Setup,
    string Fretting,
    string FromHome,
    string ShapeName,
    string SoundingName,
    double Score,
    double Difficulty,
    double ReachMillimetres,
    string[] Fingers,
    string Summary,
    WeightRow[] Weights)
{
    public static FoundRow Of(FoundVoicing found) => new(
        found.Voicing.Setup.ToString(),
        found.Voicing.Fretting.ToString(),
        found.Voicing.Fretting.ToHomeText(found.Voicing.Setup),
        found.Voicing.ShapeName,
        found.Voicing.SoundingName,
        Math.Round(found.Score, 2),
        Math.Round(found.Fingering.Difficulty, 2),
        Math.Round(found.Fingering.ReachMillimetres, 1),
        [.. found.Fingering.ByString.Select(finger => finger.Mark())],
        found.Summary,
        [.. found.Reasons.Select(reason => new WeightRow(reason.Words, Math.Round(reason.Points, 2)))]);
}

/// <summary>One weight in words.</summary>
internal sealed record WeightRow(string Words, double Points);
