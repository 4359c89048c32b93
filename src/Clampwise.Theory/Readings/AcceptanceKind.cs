namespace Clampwise.Theory;

/// <summary>How a chord symbol stands to what sounds.</summary>
public enum AcceptanceKind
{
    /// <summary>It does not name what sounds.</summary>
    Wrong,

    /// <summary>Root and quality are right, the bass is not: a slash bass is missing or another.</summary>
    OtherBass,

    /// <summary>
    /// The name that lessons use though its third is away: 7, maj7 and 9 over their root and fifth. What is written says so: D7(no3).
    /// </summary>
    WithoutThird,

    /// <summary>A correct name that the readings don't list, such as one that spells out an omitted fifth.</summary>
    Fitting,

    /// <summary>One of the readings after the first.</summary>
    AnotherReading,

    /// <summary>The first reading.</summary>
    FirstReading,
}
