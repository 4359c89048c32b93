namespace Clampwise.Streams;

/// <summary>Whoever read the output has gone, as <c>head</c> does when it has its lines: there is nothing left to do, and nothing is wrong.</summary>
internal sealed class ReaderGoneException : IOException;
