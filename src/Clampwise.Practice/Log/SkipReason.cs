namespace Clampwise.Practice;

/// <summary>Why a question was put aside without an answer. None of them counts against the player.</summary>
public enum SkipReason
{
    /// <summary>Not now.</summary>
    NotNow,

    /// <summary>The hand needs a rest from it.</summary>
    HandNeedsRest,

    /// <summary>The instrument is not at hand, or is clamped otherwise.</summary>
    NoInstrument,

    /// <summary>Too loud around, or the sound must stay off.</summary>
    CannotListen,

    /// <summary>The question seems wrong.</summary>
    LooksWrong,
}
