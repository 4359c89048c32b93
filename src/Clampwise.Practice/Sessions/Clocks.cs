namespace Clampwise.Practice;

/// <summary>Keeps the clock of the session and that of the open question running or standing as the state wants it.</summary>
internal static class Clocks
{
    public static SessionState Settle(SessionState state, Moment now)
    {
        bool runs = state is { IsPaused: false, IsAway: false, Phase: SessionPhase.Asking or SessionPhase.Judged };
        bool thinks = runs && state is { Phase: SessionPhase.Asking, Open.Id: not null };
        return state with
        {
            Clock = Run(state.Clock, runs, now),
            Open = state.Open is { } open ? open with { Clock = Run(open.Clock, thinks, now) } : null,
        };
    }

    private static SessionClock Run(SessionClock clock, bool runs, Moment now) => runs ? clock.Started(now) : clock.Stopped(now);
}
