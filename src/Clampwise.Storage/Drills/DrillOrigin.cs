namespace Clampwise.Storage;

/// <summary>Where a drill comes from.</summary>
public enum DrillOrigin
{
    /// <summary>It came with the program.</summary>
    Shipped,

    /// <summary>It lies in the player's data folder.</summary>
    Own,
}
