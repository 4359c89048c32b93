namespace Clampwise.Practice;

/// <summary>One shape on the map of shapes.</summary>
/// <param name="Shape">The shape, as it is first asked.</param>
/// <param name="ShapeName">Seen, its shape name said.</param>
/// <param name="SoundingName">Seen, its sounding name said.</param>
/// <param name="Place">Placed by its name.</param>
/// <param name="Hear">Heard and named.</param>
public sealed record MappedShape(PracticeItem Shape, Standing ShapeName, Standing SoundingName, Standing Place, Standing Hear);
