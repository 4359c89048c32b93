using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>Arguments, options and refusals that several commands share.</summary>
internal static class SharedOptions
{
    /// <summary>What a fretting is, for help texts.</summary>
    public const string FrettingWords = "Lowest string first, from the nut (x04600) or after ^ from the home clamp ('^ x 0 2 4 0 0').";

    public static Argument<string> SetupArgument() => new("setup")
    {
        Description = "A tuning and its clamps, such as 'standard + 2-4@2' or '2-4@2'; * marks the home clamp.",
    };

    public static Argument<string[]> FrettingArgument(string more = "") => new("fretting")
    {
        Description = FrettingWords + more,
        Arity = ArgumentArity.OneOrMore,
    };

    public static Option<bool> Json() => new("--json") { Description = "Print one JSON object a line." };

    public static Option<bool> Behind() => new("--behind") { Description = "Allow fingers behind a clamp that leaves the string free." };

    public static Option<string> HandOption() => new("--hand")
    {
        Description = "small, medium, large, or the span from index to little finger in millimetres.",
        HelpName = "hand",
        DefaultValueFactory = _ => "medium",
    };

    public static Option<string?> Key() => new("--key")
    {
        Description = "The key that names are spelled in, counted from the home clamp, such as D or Em; what the setup suggests unless given.",
        HelpName = "key",
    };

    /// <summary>The setup of a text with its names in the key of another one, or in the one that it suggests; a fault says which of the two it is in.</summary>
    public static Result<Setup> ReadSetup(string text, string? key)
    {
        if (!Setup.Parse(text).TryGet(out Setup? read, out Fault? fault))
        {
            return new Fault($"setup: {fault}");
        }

        return ReadKey(key).Select(given => read.In(given.Key));
    }

    /// <summary>The key of a text; none without one.</summary>
    public static Result<GivenKey> ReadKey(string? text) => text is null ? new GivenKey(null)
        : MusicalKey.Parse(TypedChord.Capitalised(text)).TryGet(out MusicalKey read, out Fault? fault) ? new GivenKey(read)
        : new Fault($"--key: {fault}");

    /// <summary>The voicing of a setup text and a fretting text; a fault says which of the two it is in.</summary>
    public static Result<Voicing> ReadVoicing(string setup, string fretting, bool allowBehind, string? key = null)
    {
        if (!ReadSetup(setup, key).TryGet(out Setup? read, out Fault? fault))
        {
            return fault;
        }

        return Voicing.Parse(read, fretting, allowBehind).TryGet(out Voicing? voicing, out fault) ? voicing : new Fault($"fretting: {fault}");
    }

    /// <summary>Says on one line what could not be read.</summary>
    public static int Refuse(this Surroundings around, Fault fault) => around.Complain(fault.ToString(), ExitCode.BadInput);

    /// <summary>Says on one line what went wrong outside the input.</summary>
    public static int Fail(this Surroundings around, Fault fault) => around.Complain(fault.ToString(), ExitCode.Trouble);

    /// <summary>Says on one line of standard error what is wrong; where JSON was asked for, also as an object on standard output.</summary>
    public static int Complain(this Surroundings around, string words, int code)
    {
        around.Error.WriteLine($"clampwise: {words}");
        try
        {
            if (around.IsJson)
            {
                JsonLines.Print(around.Out, new ErrorRow(words, code));
            }
        }
        // It may be the output itself that this is about.
        catch (IOException)
        {
        }

        return code;
    }

    /// <summary>Says on one line what could not be read, and in which part of the input.</summary>
    public static int Refuse(this Surroundings around, string part, Fault fault) => around.Refuse(new Fault($"{part}: {fault}"));
}

/// <summary>The key asked for, if any.</summary>
internal sealed record GivenKey(MusicalKey? Key);

/// <summary>What is wrong, as printed under <c>--json</c>.</summary>
internal sealed record ErrorRow(string Error, int ExitCode);
