namespace Clampwise.Practice;

/// <summary>How an answer to a <see cref="DetuneQuestion"/> did.</summary>
/// <param name="IsStringRight">The right string was named.</param>
/// <param name="IsAllRight">The right string and the right way.</param>
public sealed record DetuneVerdict(bool IsStringRight, bool IsAllRight);
