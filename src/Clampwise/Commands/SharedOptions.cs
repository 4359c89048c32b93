using System.CommandLine;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>Arguments, options and refusals that several commands share.</summary>
internal static class SharedOptions
{
    public static Argument<string> SetupArgument() => new("setup")
    {
        Description = "A tuning and its clamps, such as 'standard + 2-4@2' or '2-4@2'; * marks the home clamp.",
    };

    public static Option<bool> Json() => new("--json") { Description = "Print one JSON object a line." };

    public static Option<bool> Behind() => new("--behind") { Description = "Allow fingers behind a clamp that leaves the string free." };

    /// <summary>Says on one line what could not be read.</summary>
    public static int Refuse(this Surroundings around, string what, Fault fault)
    {
        around.Error.WriteLine($"clampwise: {what}: {fault}");
        return ExitCode.BadInput;
    }
}
