using System.Text;
using Clampwise.Commands;

namespace Clampwise;

internal static class Program
{
    public static int Main(string[] args)
    {
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return CommandTree.Run(args, Surroundings.OfThisProcess());
    }
}
