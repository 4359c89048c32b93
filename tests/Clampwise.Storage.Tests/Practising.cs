using System.Diagnostics;
using Clampwise.Storage.Harness;

namespace Clampwise.Storage.Tests;

/// <summary>The harness in a process of its own, practising in a data folder.</summary>
internal sealed class Practising : IDisposable
{
    private readonly Process _process;

    public Practising(DataFolder folder, int first, int count, int? fileBlocks = null)
    {
        string program = $"dotnet '{typeof(Answers).Assembly.Location}' '{folder.Root}' {first} {count}";
        string limited = fileBlocks is { } blocks ? $"trap '' XFSZ; ulimit -f {blocks}; export DOTNET_EnableWriteXorExecute=0; exec {program}" : $"exec {program}";
        _process = Process.Start(new ProcessStartInfo("bash", ["-c", limited]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
    }

    /// <summary>Reads what it says up to a number of lines, kills it then or when a time has passed, and reads the rest.</summary>
    /// <returns>The numbers of the answers that it said were kept.</returns>
    public List<int> KillAfter(int lines, TimeSpan time)
    {
        using var timer = new Timer(_ => _process.Kill(), null, time, Timeout.InfiniteTimeSpan);
        var kept = new List<int>();
        for (int read = 0; _process.StandardOutput.ReadLine() is { } line; read++)
        {
            if (line.StartsWith("kept ", StringComparison.Ordinal))
            {
                kept.Add(int.Parse(line[5..]));
            }

            if (read == lines)
            {
                _process.Kill();
            }
        }

        _process.WaitForExit();
        return kept;
    }

    /// <summary>Everything that it says until it ends by itself.</summary>
    public (int Exit, string[] Lines) ToEnd()
    {
        string output = _process.StandardOutput.ReadToEnd();
        string errors = _process.StandardError.ReadToEnd();
        _process.WaitForExit();
        return (_process.ExitCode, (output + errors).Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill();
        }

        _process.Dispose();
    }
}
