using System.CommandLine;
using System.Text.Json.Serialization;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise find SETUP</c>: the voicings of a setup that fit, best first; or how many frettings there are.</summary>
internal static class FindCommand
{
    // A longer name, such as that of a bare interval, takes its room on its own line.
    private const int UsualName = 12;

    public static Command Build(Surroundings around)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        var asked = new FindOptions();
        Option<string> hand = SharedOptions.HandOption();
        Option<bool> json = SharedOptions.Json();
        var command = new Verb("find", "Find voicings of a setup, the best first: every one that a hand can finger is looked at.", "find 2-4@2 --shape Dsus4", "find 2-4@2 --sounding E --unbroken --limit 5", "find 2-4@2 --shape A --moveable", "find 2-4@2 --key G", "find 2-4@2 --shape D7 --key G", "find 2-4@2 --count --fingers 3") { setup, hand, json };
        asked.AddTo(command, hand);
        command.SetAction(parsed =>
        {
            if (!Setup.Parse(parsed.GetRequiredValue(setup)).TryGet(out Setup? read, out Fault? fault))
            {
                return around.Refuse("setup", fault);
            }

            if (asked.IsCount(parsed))
            {
                return asked.Counter(parsed, read).TryGet(out FrettingCounter? counter, out fault) ? PrintCount(around, counter, read, parsed.GetValue(json)) : around.Refuse(fault);
            }

            if (!Hand.Parse(parsed.GetValue(hand)!).TryGet(out Hand? player, out fault))
            {
                return around.Refuse("--hand", fault);
            }

            player = player with { UsesThumb = asked.UsesThumb(parsed) };
            Result<Finder> finder = asked.Space(parsed, read).Select(space => new Finder(read, player, null, space));
            if (asked.IsKey(parsed))
            {
                Result<KeyHands> page = finder.Then(finder => asked.Query(parsed, read).Then(finder.FindKey));
                return page.TryGet(out KeyHands? hands, out fault) ? KeyPage.Print(around, read, hands, parsed.GetValue(json)) : around.Refuse(fault);
            }

            Result<FoundHands> found = finder.Then(finder => asked.Query(parsed, read).Then(query => Find(finder, query, asked.IsAll(parsed))));
            return found.TryGet(out FoundHands? result, out fault) ? Print(around, read, result, asked.IsDrone(parsed), parsed.GetValue(json)) : around.Refuse(fault);
        });
        return command;
    }

    private static Result<FoundHands> Find(Finder finder, VoicingQuery query, bool isAll) => isAll
        ? finder.Find(query).Select(found => new FoundHands(found.Total, [.. found.Voicings.Select(FoundHand.Alone)]))
        : finder.FindHands(query);

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

    private static int Print(Surroundings around, Setup setup, FoundHands result, bool isDrone, bool asJson)
    {
        if (!asJson)
        {
            around.PrintLines([$"{Counted.Of(result.Total, "voicing")} in {setup}{(result.Hands.Length < result.Total ? $", the best {result.Hands.Length}" : "")}{(result.Key is { } key ? $", chords of {key} first" : "")}"]);
        }

        foreach (FoundHand found in asJson ? result.Hands : [])
        {
            JsonLines.Print(around.Out, FoundRow.Of(found) with { MovesTo = isDrone ? [.. Moves(found)] : null });
        }

        foreach (string line in asJson ? [] : Lines(result.Hands, isDrone, OutputLines.Width(around)).SelectMany(line => OutputLines.Wrap(line, OutputLines.Width(around))))
        {
            around.Out.WriteLine(line);
        }

        return ExitCode.Good;
    }

    // Columns no wider than what stands in them: on a narrow line the room goes to what speaks for a voicing.
    private static IEnumerable<string> Lines(IReadOnlyList<FoundHand> all, bool isDrone, int width)
    {
        (string Fretting, string Shape, string Sounds)[] texts = [.. all.Select(found => found.Whole.Voicing).Select(voicing => ($"{voicing.Fretting}", voicing.ShapeName, voicing.SoundingName))];
        int fretting = texts.Select(text => text.Fretting.Length).DefaultIfEmpty().Max();
        int shape = texts.Select(text => Math.Min(text.Shape.Length, UsualName)).DefaultIfEmpty().Max();
        int sounds = texts.Select(text => Math.Min(text.Sounds.Length, UsualName)).DefaultIfEmpty().Max();
        return all.Zip(texts).SelectMany(pair =>
        {
            (FoundHand found, (string Fretting, string Shape, string Sounds) text) = pair;
            string names = $"{text.Fretting.PadRight(fretting)}  shape {text.Shape.PadRight(shape)}  sounds {text.Sounds.PadRight(sounds)}  ";
            string line = names + found.SummaryWithin(width - names.Length);
            line = line.Length <= width ? line : $"{text.Fretting}  shape {text.Shape}  sounds {text.Sounds}  {found.SummaryWithin(0)}";
            string moves = isDrone ? string.Join(", ", Moves(found)) : "";
            return moves.Length > 0 ? (string[])[line, $"  moves to {moves}"] : [line];
        });
    }

    // Each place with its lowest finger's fret and its shape name there.
    private static IEnumerable<string> Moves(FoundHand hand) => DroneMoves.Of(hand.Whole.Voicing)
        .Select(moved => $"{moved.Fretting.Stops.Where(stop => stop.IsFretted).Min(stop => stop.Finger)} {moved.ShapeName}");
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
    string[] Variants,
    string[] AlsoWithout,
    WeightRow[] Weights)
{
    /// <summary>With <c>--drone</c>: each fret that the hand moves to with its shape name there.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string[]? MovesTo { get; init; }

    public static FoundRow Of(FoundHand hand) => Of(hand.Whole, hand);

    private static FoundRow Of(FoundVoicing found, FoundHand hand) => new(
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
        [.. hand.Variants.Select(variant => $"{variant.Fretting}")],
        [.. hand.WithoutStrings.Select(strings => $"{strings}")],
        [.. found.Reasons.Select(reason => new WeightRow(reason.Words, Math.Round(reason.Points, 2)))]);
}

/// <summary>One weight in words.</summary>
internal sealed record WeightRow(string Words, double Points);
