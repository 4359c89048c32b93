using System.Runtime.InteropServices;
using System.Text;

namespace Clampwise.Streams;

/// <summary>Standard input, output and error of this process, whatever the caller made of them.</summary>
internal static partial class StandardStreams
{
    private const int Count = 3;
    private const int GetFlags = 1;
    private const int CloseOnExec = 1;
    private const int ReadAndWrite = 2;
    private static readonly UTF8Encoding s_plain = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>
    /// Puts the null device in the place of descriptors that were closed at the start, by beginning anew with them open: until then the
    /// runtime has files of its own there, and what it opens next would be taken for the output. What a caller hands over never closes
    /// when a program is begun (POSIX.1-2017, execve), what the runtime opens does: that tells them apart.
    /// </summary>
    public static void OpenMissing()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        int[] missing = [.. Enumerable.Range(0, Count).Where(IsMissing)];
        if (missing.Length == 0)
        {
            return;
        }

        int nothing = Open("/dev/null", ReadAndWrite);
        string[] words = File.ReadAllText("/proc/self/cmdline").TrimEnd('\0').Split('\0');
        if (nothing >= 0 && missing.All(descriptor => Duplicate(nothing, descriptor) >= 0))
        {
            Begin("/proc/self/exe", [.. words, null]);
        }
    }

    /// <summary>
    /// What <c>TERM</c> says, if it is no name of a terminal. The runtime looks for a file of that name, and fails on one that is no
    /// description of a terminal: it is told of a plain one instead.
    /// </summary>
    public static string? RefuseTerm()
    {
        if (Environment.GetEnvironmentVariable("TERM") is not { } term || !(term.Contains('/', StringComparison.Ordinal) || term.StartsWith('.')))
        {
            return null;
        }

        Environment.SetEnvironmentVariable("TERM", "dumb");
        return term;
    }

    /// <summary>The same surroundings with streams that never end the program by themselves.</summary>
    public static Surroundings In(Surroundings around) => OperatingSystem.IsWindows() ? around : around with
    {
        In = Console.IsInputRedirected ? new BoundedReader(around.In) : around.In,
        Out = Writer(1, mayFail: false),
        Error = Writer(2, mayFail: true),
    };

    private static StreamWriter Writer(int descriptor, bool mayFail) => new(new DescriptorStream(descriptor, mayFail), s_plain) { AutoFlush = true };

    private static bool IsMissing(int descriptor) => Control(descriptor, GetFlags) is var flags && (flags < 0 || (flags & CloseOnExec) != 0);

    [LibraryImport("libc", EntryPoint = "fcntl")]
    private static partial int Control(int descriptor, int command);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "dup2")]
    private static partial int Duplicate(int from, int to);

    [LibraryImport("libc", EntryPoint = "execv", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Begin(string path, string?[] words);
}
