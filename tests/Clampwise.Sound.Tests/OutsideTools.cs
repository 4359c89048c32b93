using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Clampwise.Sound.Tests;

/// <summary>Programs from outside that tests measure against. With CLAMPWISE_OUTSIDE set to 1 a missing one is a failure, else the test is skipped.</summary>
internal static class OutsideTools
{
    private static bool IsRequired => Environment.GetEnvironmentVariable("CLAMPWISE_OUTSIDE") == "1";

    /// <summary>Why a test is skipped: what it needs and is not there; null if all is, or if a missing one is to be a failure.</summary>
    public static string? Missing(params string[] needs) =>
        IsRequired || needs.Where(need => !IsThere(need)).ToArray() is not { Length: > 0 } missing ? null : $"not installed: {string.Join(", ", missing)}";

    private static bool IsThere(string need) =>
        need.Contains('/', StringComparison.Ordinal) ? File.Exists(need)
        : need.Contains(".so", StringComparison.Ordinal) ? IsLibrary(need)
        : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, need)));

    private static bool IsLibrary(string name)
    {
        bool isThere = NativeLibrary.TryLoad(name, out nint library);
        if (isThere)
        {
            NativeLibrary.Free(library);
        }

        return isThere;
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
}
