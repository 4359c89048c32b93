namespace Clampwise.Storage.Tests;

/// <summary>A test of what only Linux has; elsewhere it is reported as skipped.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LinuxFactAttribute : FactAttribute
{
    /// <summary>Why it is skipped elsewhere.</summary>
    public const string Why = "tests what only Linux has";

    public LinuxFactAttribute() => Skip = OperatingSystem.IsLinux() ? null : Why;
}
