using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Sound;
using Clampwise.Sound.Performing;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>How a voicing is played from the command line: the options that <c>play</c> and <c>render</c> share.</summary>
internal sealed class Stroke
{
    private static readonly string[] s_kinds = ["down", "up", "block", "arpeggio"];

    private readonly Option<string> _kind = new("--stroke")
    {
        Description = "down, up, block (all strings at once) or arpeggio.",
        HelpName = "stroke",
        DefaultValueFactory = _ => s_kinds[0],
    };

    private readonly Option<int?> _string = new("--string") { Description = "One string alone, 1 the highest.", HelpName = "number" };
    private readonly Option<double> _slower = new("--slower") { Description = "So many times slower, 1 to 8.", HelpName = "times", DefaultValueFactory = _ => 1.0 };
    private readonly Option<double?> _a4 = new("--a4") { Description = "Frequency of A4 in hertz, 415 to 466; 440 unless given.", HelpName = "hertz" };

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Verb command)
    {
        command.Add(_kind);
        command.Add(_string);
        command.Add(_slower);
        command.Add(_a4);
        command.Excludes(_string, _kind);
    }

    /// <summary>The performance that the options ask for.</summary>
    public Result<Performance> Of(Voicing voicing, ParseResult parsed)
    {
        if (voicing.Pitches.IsEmpty)
        {
            return new Fault("every string is muted: there is nothing to hear");
        }

        double slower = parsed.GetValue(_slower);
        if (slower is not (>= 1 and <= 8))
        {
            return new Fault($"--slower: expected a number from 1 to 8, found {slower}");
        }

        ConcertPitch a4 = default;
        if (parsed.GetValue(_a4) is { } hertz && !ConcertPitch.Of(hertz).TryGet(out a4, out Fault? pitchFault))
        {
            return new Fault($"--a4: {pitchFault.Message}");
        }

        PlayingStyle style = (PlayingStyle.Standard with { ConcertPitch = a4 }).Slower(slower);
        return parsed.GetValue(_string) is { } number ? OneString(voicing, number, style) : Whole(voicing, parsed.GetValue(_kind)!, style);
    }

    private static Result<Performance> OneString(Voicing voicing, int number, PlayingStyle style) =>
        number >= 1 && number <= voicing.Setup.StringCount
            ? Perform.SingleString(voicing, StringNumber.Of(number), style)
            : new Fault($"--string: there is no string {number}: strings are numbered 1, the highest, to {voicing.Setup.StringCount}");

    private static Result<Performance> Whole(Voicing voicing, string kind, PlayingStyle style) => kind switch
    {
        "down" => Perform.Strum(voicing, StrumDirection.Down, style),
        "up" => Perform.Strum(voicing, StrumDirection.Up, style),
        "block" => Perform.Block(voicing, style),
        "arpeggio" => Perform.Arpeggio(voicing, ArpeggioPattern.Upward, style),
        _ => new Fault($"--stroke: expected one of {string.Join(", ", s_kinds)}, found '{kind}'"),
    };
}
