namespace Clampwise.Fretboard;

/// <summary>A voicing that fits a query, with its score.</summary>
internal readonly record struct Candidate(PackedVoicing Voicing, double Score);
