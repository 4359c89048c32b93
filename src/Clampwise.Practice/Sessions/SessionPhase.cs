namespace Clampwise.Practice;

/// <summary>Where a session stands. Being paused is apart from it: see <see cref="SessionState.IsPaused"/>.</summary>
public enum SessionPhase
{
    /// <summary>Planned, not begun.</summary>
    Ready,

    /// <summary>A card is shown.</summary>
    Showing,

    /// <summary>A question is open.</summary>
    Asking,

    /// <summary>A verdict stands.</summary>
    Judged,

    /// <summary>Over.</summary>
    Finished,
}
