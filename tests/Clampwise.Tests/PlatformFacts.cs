namespace Clampwise.Tests;

/// <summary>A test of what only Linux has; elsewhere it is reported as skipped.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class LinuxFactAttribute : FactAttribute
{
    public LinuxFactAttribute() => Skip = OperatingSystem.IsLinux() ? null : "tests what only Linux has";
}

/// <summary>A test of what Windows gives to administrators only; there it is reported as skipped.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class UnixFactAttribute : FactAttribute
{
    public UnixFactAttribute() => Skip = OperatingSystem.IsWindows() ? "Windows makes links for administrators only" : null;
}
