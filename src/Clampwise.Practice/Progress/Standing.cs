namespace Clampwise.Practice;

/// <summary>How a shape stands in one direction.</summary>
public enum Standing
{
    /// <summary>Never asked.</summary>
    Unmet,

    /// <summary>Asked, and not known yet.</summary>
    Met,

    /// <summary>Known.</summary>
    Known,
}
