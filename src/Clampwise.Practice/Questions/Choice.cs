using Clampwise.Fretboard;

namespace Clampwise.Practice;

/// <summary>One of the choices of a question.</summary>
/// <param name="Text">Its words: a chord name, or the fretting text of a shape.</param>
/// <param name="Voicing">The voicing that it stands for.</param>
public sealed record Choice(string Text, Voicing Voicing);
