namespace Clampwise.Theory;

/// <summary>What a degree element does to the chord of its kind (MusicXML 4.0, degree-type-value).</summary>
public enum MusicXmlDegreeType
{
    /// <summary>A tone is added.</summary>
    Add,

    /// <summary>A tone of the kind is raised or lowered.</summary>
    Alter,

    /// <summary>A tone of the kind is left out.</summary>
    Subtract,
}
