namespace Clampwise.Storage.Tests;

/// <summary>A test with data of what only Linux has; elsewhere it is reported as skipped.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LinuxTheoryAttribute : TheoryAttribute
{
    public LinuxTheoryAttribute() => Skip = OperatingSystem.IsLinux() ? null : LinuxFactAttribute.Why;
}
