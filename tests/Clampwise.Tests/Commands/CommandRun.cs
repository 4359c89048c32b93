using Clampwise.Commands;
using Clampwise.Sound.Players;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Tests.Commands;

/// <summary>One command line carried out inside the test process.</summary>
internal sealed record CommandRun(int ExitCode, string Out, string Error)
{
    public static CommandRun Of(params string[] args) => WithInput("", args);

    public static CommandRun WithInput(string input, params string[] args) => In(around => around, input, args);

    /// <summary>A command line carried out in other surroundings.</summary>
    public static CommandRun In(Func<Surroundings, Surroundings> change, string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var around = new Surroundings(new StringReader(input), output, error, IsTerminal: false, new FakeTimeProvider(), name => name == "XDG_DATA_HOME" ? Path.Combine(Path.GetTempPath(), "clampwise-tests-no-data") : null, _ => { })
        {
            OpenSound = (_, _) => new CapturedOut(),
        };
        int code = CommandTree.Run(args, change(around));
        return new CommandRun(code, output.ToString(), error.ToString());
    }

    /// <summary>The lines of standard output.</summary>
    public string[] Lines => Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
