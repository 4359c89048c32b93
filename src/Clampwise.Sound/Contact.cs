using Clampwise.Fretboard;

namespace Clampwise.Sound;

/// <summary>What the string's sounding length begins at. Each sounds a little different: bone at the nut, rubber or flesh elsewhere.</summary>
public enum Contact
{
    /// <summary>The string rings from the nut.</summary>
    Nut,

    /// <summary>A clamp holds the string against a fret.</summary>
    Clamp,

    /// <summary>A finger holds the string against a fret.</summary>
    Finger,
}

/// <summary>Reads the contact off a voicing.</summary>
public static class ContactOf
{
    /// <summary>The contact of one string of a voicing.</summary>
    public static Contact String(SoundingString sounding) =>
        sounding.Stop.IsFretted ? Contact.Finger : sounding.IsHeld ? Contact.Clamp : Contact.Nut;
}
