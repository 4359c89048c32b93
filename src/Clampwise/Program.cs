using System.Text;
using Clampwise.Commands;
using Clampwise.Terminal;

namespace Clampwise;

internal static class Program
{
    public static int Main(string[] args)
    {
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        int code = CommandTree.Run(args, Surroundings.OfThisProcess());
        if (!OperatingSystem.IsWindows() && !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb")
        {
            TerminalHost.TakeBackKeypad();
        }

        return code;
    }
}
