using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary><c>clampwise explain SETUP FRETTING</c>: every reading of a voicing with its degrees, and how a hand plays it.</summary>
internal static class ExplainCommand
{
    public static Command Build(Surroundings around)
    {
        Argument<string> setup = SharedOptions.SetupArgument();
        Argument<string[]> fretting = SharedOptions.FrettingArgument();
        Option<string> hand = SharedOptions.HandOption();
        Option<bool> json = SharedOptions.Json();
        Option<bool> behind = SharedOptions.Behind();
        Option<string?> key = SharedOptions.Key();
        var command = new Verb("explain", "Explain a voicing: all its readings with their degrees, its fingering, and what makes it hard.", "explain 2-4@2 x04600", "explain 2-4@2 x04600 --hand small") { setup, fretting, key, hand, json, behind };
        command.SetAction(parsed =>
        {
            Result<Voicing> read = SharedOptions.ReadVoicing(parsed.GetRequiredValue(setup), string.Join(' ', parsed.GetRequiredValue(fretting)), parsed.GetValue(behind), parsed.GetValue(key));
            if (!read.TryGet(out Voicing? voicing, out Fault? fault))
            {
                return around.Refuse(fault);
            }

            if (!Hand.Parse(parsed.GetValue(hand)!).TryGet(out Hand? player, out fault))
            {
                return around.Refuse("--hand", fault);
            }

            Result<Fingering> fingering = Fingering.Of(voicing, player);
            if (parsed.GetValue(json))
            {
                JsonLines.Print(around.Out, ExplainedRow.Of(voicing, fingering));
            }
            else
            {
                Print(around, Explanation.Of(voicing, player));
            }

            return ExitCode.Good;
        });
        return command;
    }

    private static void Print(Surroundings around, Explanation explanation) => around.PrintLines(
        explanation.Lines.Concat(explanation.Voicing.Sounding.Readings.Select(reading => $"as {reading.Symbol,-12} {string.Join(' ', reading.Tones.Select(tone => tone.Degree))}")));
}

/// <summary>A voicing as printed by <c>explain --json</c>.</summary>
internal sealed record ExplainedRow(
    string Setup,
    string Fretting,
    string FromHome,
    string ShapeName,
    string SoundingName,
    ReadingRow[] Readings,
    StringRow[] Strings,
    string[] Words,
    bool Playable,
    string? Why,
    string[] Fingers,
    double? ReachMillimetres,
    double? Difficulty)
{
    public static ExplainedRow Of(Voicing voicing, Result<Fingering> fingering)
    {
        Fingering? fingers = fingering.IsGood ? fingering.Value : null;
        return new ExplainedRow(
            voicing.Setup.ToString(),
            voicing.Fretting.ToString(),
            voicing.Fretting.ToHomeText(voicing.Setup),
            voicing.ShapeName,
            voicing.SoundingName,
            [.. voicing.Sounding.Readings.Select(reading => new ReadingRow(reading.Symbol.ToString(), [.. reading.Tones.Select(tone => tone.Degree.ToString())], [.. reading.Tones.Select(tone => tone.Spelled.ToString())]))],
            [.. voicing.Strings.Zip(voicing.StringNotes, StringRow.Of)],
            [.. VoicingWords.Lines(voicing, fingers)],
            fingering.IsGood,
            fingering.IsGood ? null : fingering.Fault.Message,
            fingers is null ? [] : [.. fingers.ByString.Select(finger => finger.Mark())],
            fingers is null ? null : Math.Round(fingers.ReachMillimetres, 1),
            fingers is null ? null : Math.Round(fingers.Difficulty, 2));
    }
}

/// <summary>One reading of a voicing: degrees and spelled pitches of the sounding strings, lowest string first.</summary>
internal sealed record ReadingRow(string Name, string[] Degrees, string[] Pitches);
