namespace Clampwise.Storage;

/// <summary>A key with its value.</summary>
/// <param name="Key">The key, with dots between its words, without quotes.</param>
/// <param name="At">Where the key stands.</param>
/// <param name="Value">The value; null if the text breaks off before it.</param>
public sealed record TomlEntry(string Key, TextPlace At, TomlValue? Value);
