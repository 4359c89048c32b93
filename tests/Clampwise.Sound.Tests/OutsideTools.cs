using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Clampwise.Sound.Tests;

/// <summary>Programs from outside that tests measure against. With CLAMPWISE_OUTSIDE set to 1 a missing one is a failure, else it is passed over.</summary>
internal static class OutsideTools
{
    private static bool IsRequired => Environment.GetEnvironmentVariable("CLAMPWISE_OUTSIDE") == "1";

    public static bool Has(string program)
    {
        string[] folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        return Found(program, folders.Any(folder => File.Exists(Path.Combine(folder, program))));
    }

    public static bool HasFile(string path) => Found(path, File.Exists(path));

    public static bool HasLibrary(string name)
    {
        bool isThere = NativeLibrary.TryLoad(name, out nint library);
        if (isThere)
        {
            NativeLibrary.Free(library);
        }

        return Found(name, isThere);
    }

    public static string Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program}: {errors.GetAwaiter().GetResult()}");
        return output;
    }

    private static bool Found(string what, bool isThere)
    {
        Assert.True(isThere || !IsRequired, $"{what} is not installed");
        return isThere;
    }
}
