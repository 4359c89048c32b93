using Clampwise.Sound;
using Clampwise.Sound.Players;

namespace Clampwise;

/// <summary>Everything outside the program that a command may touch, passed in so that tests can stand in for it.</summary>
/// <param name="In">Standard input.</param>
/// <param name="Out">Standard output.</param>
/// <param name="Error">Standard error.</param>
/// <param name="IsTerminal">True if both standard input and standard output are a terminal.</param>
/// <param name="Time">Clock and local time zone.</param>
/// <param name="Variable">Reads an environment variable; null if it is not set.</param>
/// <param name="Wait">Lets time go by while something plays.</param>
internal sealed record Surroundings(
    TextReader In,
    TextWriter Out,
    TextWriter Error,
    bool IsTerminal,
    TimeProvider Time,
    Func<string, string?> Variable,
    Action<TimeSpan> Wait)
{
    /// <summary>Columns and rows of the terminal; null without one.</summary>
    public Func<(int Columns, int Rows)?> Size { get; init; } = () => null;

    /// <summary>True if results are printed as JSON, so that what is wrong is too.</summary>
    public bool IsJson { get; init; }

    /// <summary>Opens the sound, and waits so long for the device's answer.</summary>
    public Func<SoundSettings, TimeSpan, ISoundOut> OpenSound { get; init; } = SoundSystem.Open;

    /// <summary>The real ones of this process.</summary>
    public static Surroundings OfThisProcess()
    {
        bool isTerminal = !Console.IsInputRedirected && !Console.IsOutputRedirected;
        return new Surroundings(Console.In, Console.Out, Console.Error, isTerminal, TimeProvider.System, Environment.GetEnvironmentVariable, Thread.Sleep)
        {
            Size = () => Console.IsOutputRedirected ? null : (Console.WindowWidth, Console.WindowHeight),
        };
    }
}
