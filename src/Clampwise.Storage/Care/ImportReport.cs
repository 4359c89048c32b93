using System.Collections.Immutable;

namespace Clampwise.Storage;

/// <summary>What came of taking over another log.</summary>
/// <param name="Read">How many entries could be read, each counted once.</param>
/// <param name="Added">How many of them were new here.</param>
/// <param name="Faults">The lines that could not be read, each with its place.</param>
public sealed record ImportReport(int Read, int Added, ImmutableArray<FileFault> Faults);
