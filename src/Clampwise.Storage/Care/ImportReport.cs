namespace Clampwise.Storage;

/// <summary>What came of taking over another log.</summary>
/// <param name="Read">How many lines could be read.</param>
/// <param name="Added">How many entries were new here.</param>
/// <param name="Bad">How many lines could not be read; each was reported with its place.</param>
public sealed record ImportReport(int Read, int Added, int Bad);
