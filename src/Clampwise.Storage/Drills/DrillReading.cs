using System.Collections.Immutable;

namespace Clampwise.Storage;

/// <summary>What came of reading a drill file: a drill, or at least one fault.</summary>
/// <param name="Sheet">The drill; null if there is a fault.</param>
/// <param name="Faults">Every fault found, in the order of the file as far as it could be read.</param>
public sealed record DrillReading(DrillSheet? Sheet, ImmutableArray<FileFault> Faults);
