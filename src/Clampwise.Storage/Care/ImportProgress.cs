namespace Clampwise.Storage;

/// <summary>How far a long file has been taken over.</summary>
/// <param name="Percent">Of the file's bytes.</param>
/// <param name="Read">Lines that could be read so far.</param>
public readonly record struct ImportProgress(int Percent, int Read);
