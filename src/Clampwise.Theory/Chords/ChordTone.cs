namespace Clampwise.Theory;

/// <summary>A tone of a chord: its degree and the note that it is.</summary>
public readonly record struct ChordTone(ChordDegree Degree, NoteName Note);
