namespace Clampwise.Practice;

/// <summary>The three ways of practising.</summary>
public enum SessionKind
{
    /// <summary>The daily drill.</summary>
    Daily,

    /// <summary>The name-that-voicing quiz.</summary>
    Quiz,

    /// <summary>The review of weak shapes.</summary>
    Weak,
}
