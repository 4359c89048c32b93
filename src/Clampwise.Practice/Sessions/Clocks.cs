namespace Clampwise.Practice;

/// <summary>Keeps the clock of the session and that of the open question running or standing as the state wants it.</summary>
internal static class Clocks
{
    public static SessionState Settle(SessionState state, Moment now)
    {
        // A shape that is met is practice; moving a clamp and tuning are not.
        bool isPractice = state is { Phase: SessionPhase.Asking or SessionPhase.Judged } or { Phase: SessionPhase.Showing, Card: Card.NewShape };
        bool runs = isPractice && state is { IsPaused: false, IsAway: false };
        bool thinks = runs && state is { Phase: SessionPhase.Asking, Open.Id: not null };
        return state with
        {
            Clock = Run(state.Clock, runs, now),
            Open = state.Open is { } open ? open with { Clock = Run(open.Clock, thinks, now) } : null,
        };
    }

    private static SessionClock Run(SessionClock clock, bool runs, Moment now) => runs ? clock.Started(now) : clock.Stopped(now);
}
