namespace Clampwise.Sound.SoundFonts;

/// <summary>One sound of a SoundFont.</summary>
/// <param name="Bank">Its bank; 0 for the ordinary ones.</param>
/// <param name="Number">Its number in the bank, 0 to 127, counted from 0 as in the file.</param>
/// <param name="Name">Its name.</param>
public sealed record SoundFontPreset(int Bank, int Number, string Name)
{
    /// <summary>Bank, number and name, such as <c>0:25 Steel Guitar</c>; the part before the blank finds this preset again.</summary>
    public override string ToString() => $"{Bank}:{Number} {Name}";
}
