namespace Clampwise.Sound.Tests;

/// <summary>A test with programs (by name), files (by path) or libraries (by a name with .so in it) from outside; without them it is skipped and says what is missing, unless CLAMPWISE_OUTSIDE is 1.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class OutsideFactAttribute : FactAttribute
{
    public OutsideFactAttribute(params string[] needs) => Skip = OutsideTools.Missing(needs);
}

/// <inheritdoc cref="OutsideFactAttribute"/>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class OutsideTheoryAttribute : TheoryAttribute
{
    public OutsideTheoryAttribute(params string[] needs) => Skip = OutsideTools.Missing(needs);
}
