namespace Clampwise.Theory;

/// <summary>
/// A degree element of MusicXML 4.0. The alteration of an added tone counts from the major or perfect interval, save for the seventh,
/// which counts from the minor one; that of an altered tone counts from the tone that the kind holds (degree-alter).
/// </summary>
/// <param name="Value">degree-value: 1 to 13.</param>
/// <param name="Alter">degree-alter in semitones.</param>
/// <param name="Type">degree-type.</param>
public readonly record struct MusicXmlDegree(int Value, int Alter, MusicXmlDegreeType Type)
{
    /// <summary>Type, value and alteration, such as alter 5 -1.</summary>
    public override string ToString() => $"{Type.ToString().ToLowerInvariant()} {Value} {Alter:+0;-0;0}";
}
