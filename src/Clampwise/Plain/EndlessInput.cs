namespace Clampwise.Plain;

/// <summary>An input that never ends and means nothing, such as a paste gone wrong: after so many lines no more are read.</summary>
internal static class EndlessInput
{
    /// <summary>Lines in a row that may change nothing.</summary>
    public const int Most = 500;

    /// <summary>Said in a session.</summary>
    public static readonly string InSession = $"{Most} lines in a row changed nothing: no more are read. The session waits until the end of the day.";

    /// <summary>Said in the explorer.</summary>
    public static readonly string InExplorer = $"{Most} lines in a row could not be read: no more are.";
}
