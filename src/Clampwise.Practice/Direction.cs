namespace Clampwise.Practice;

/// <summary>What is given and what is asked for. Each voicing has a memory of its own in each direction.</summary>
public enum Direction
{
    /// <summary>See a shape, say its name counted from the home clamp.</summary>
    SeeShapeSayShapeName,

    /// <summary>See a shape, say its name at concert pitch.</summary>
    SeeShapeSaySoundingName,

    /// <summary>Given a name, place the shape on the fretboard.</summary>
    NamePlaceShape,

    /// <summary>Hear a voicing, name it.</summary>
    HearSayName,

    /// <summary>Hear a voicing, pick its shape.</summary>
    HearPickShape,

    /// <summary>Hear two voicings: same or different, and which strings moved.</summary>
    HearTwoCompare,

    /// <summary>Given a shape name and the rig, say the sounding name.</summary>
    ShapeNameSaySoundingName,

    /// <summary>Given a sounding name and the rig, say the shape name.</summary>
    SoundingNameSayShapeName,

    /// <summary>Change between two shapes in time.</summary>
    ChangeInTime,
}
