using System.Collections.Immutable;

namespace Clampwise.Storage;

/// <summary>What came of taking over another log.</summary>
/// <param name="Read">How many lines could be read.</param>
/// <param name="Added">How many entries were new here.</param>
/// <param name="Bad">How many lines could not be read; of a file each was told with its place as it was met.</param>
public sealed record ImportReport(int Read, int Added, int Bad)
{
    /// <summary>The bad lines of a backup, which is read as a whole; empty for files, of which there may be any number.</summary>
    public ImmutableArray<FileFault> Faults { get; init; } = [];
}
