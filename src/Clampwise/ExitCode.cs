namespace Clampwise;

/// <summary>What the process hands back.</summary>
internal static class ExitCode
{
    /// <summary>All was well.</summary>
    public const int Good = 0;

    /// <summary>Something outside the input went wrong, such as a folder that can't be written.</summary>
    public const int Trouble = 1;

    /// <summary>The input could not be read; one line on standard error says what, where and what would be right.</summary>
    public const int BadInput = 2;
}
