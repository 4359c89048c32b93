using System.Text;
using Clampwise.Commands;
using Clampwise.Streams;
using Clampwise.Terminal;

namespace Clampwise;

internal static class Program
{
    public static int Main(string[] args)
    {
        StandardStreams.OpenMissing();
        string? noTerm = StandardStreams.RefuseTerm();
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        Surroundings around = StandardStreams.In(Surroundings.OfThisProcess());
        if (noTerm is not null)
        {
            CleanWriter.Over(around.Error).WriteLine($"clampwise: TERM is '{noTerm}', which is no name of a terminal: taken for dumb");
        }

        int code = CommandTree.Run(args, around);
        if (!OperatingSystem.IsWindows() && !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb")
        {
            TerminalHost.TakeBackKeypad();
        }

        return code;
    }
}
