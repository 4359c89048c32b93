namespace Clampwise.Practice;

/// <summary>Why a question stands in a session.</summary>
public enum SessionPart
{
    /// <summary>Solid already: to get hand and ear going.</summary>
    WarmUp,

    /// <summary>Its recall has fallen to the wished level.</summary>
    Due,

    /// <summary>Weak for another reason than time.</summary>
    Weak,

    /// <summary>Never asked before.</summary>
    New,

    /// <summary>Next to one that it was taken for.</summary>
    Contrast,

    /// <summary>Time is left: kept fresh before it is due.</summary>
    Ahead,

    /// <summary>Once more in the same session, after a miss or a first sight.</summary>
    Again,

    /// <summary>Easy, to end on.</summary>
    Close,
}
