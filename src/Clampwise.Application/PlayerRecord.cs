using Clampwise.Practice;

namespace Clampwise.Application;

/// <summary>The log of what was answered, with what it says of the player.</summary>
/// <param name="log">The log.</param>
/// <param name="memory">What it says so far.</param>
public sealed class PlayerRecord(IAttemptLog log, MemoryState memory)
{
    /// <summary>The log.</summary>
    public IAttemptLog Log { get; } = log;

    /// <summary>What is known of the player.</summary>
    public MemoryState Memory { get; private set; } = memory;

    /// <summary>Takes over what was learned of the player.</summary>
    public void Learn(MemoryState memory) => Memory = memory;
}
