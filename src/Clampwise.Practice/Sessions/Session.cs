
namespace Clampwise.Practice;

/// <summary>A session as a pure step: from a state and an event to the next state and what is to be done.</summary>
public static class Session
{
    /// <summary>The step.</summary>
    public static SessionStep Step(SessionState state, SessionEvent happened, SessionWorld world)
    {
        Moment now = happened.Stamp.Now;
        if (state.Phase == SessionPhase.Finished)
        {
            return SessionStep.Refused(state, SessionWords.NotNow);
        }

        return happened switch
        {
            SessionEvent.Begun => Begin(state, happened.Stamp, world),
            SessionEvent.Paused => SessionStep.To(Clocks.Settle(state with { IsPaused = true }, now)),
            SessionEvent.TakenUp => TakeUp(Clocks.Settle(state with { IsPaused = false }, now), happened.Stamp, world),
            SessionEvent.FocusLost => SessionStep.To(Clocks.Settle(state with { IsAway = true }, now)),
            SessionEvent.FocusGained => SessionStep.To(Clocks.Settle(state with { IsAway = false }, now)),
            SessionEvent.CutShort => Finishing.Finish(state, happened.Stamp, world, wasCutShort: true),
            SessionEvent.SoundChanged changed => ChangeSound(state, changed, world),
            _ when state.IsPaused => SessionStep.Refused(state, SessionWords.IsPaused),
            SessionEvent.QuestionShown shown => Shown(state, shown),
            SessionEvent.SoundRepeated repeated => SoundAgain(state, repeated),
            SessionEvent.HintAsked => GiveHint(state),
            SessionEvent.Answered answered => Answering.Take(state, answered, world),
            SessionEvent.Regraded overruled => Answering.Overrule(state, overruled),
            SessionEvent.AnswerUndone => Answering.Undo(state, happened.Stamp),
            SessionEvent.Skipped skipped => Skip(state, skipped, world),
            SessionEvent.WentOn when state.Phase is SessionPhase.Judged or SessionPhase.Showing => Asking.Next(state, happened.Stamp, world),
            _ => SessionStep.Refused(state, SessionWords.NotNow),
        };
    }

    private static SessionStep Begin(SessionState state, Stamp stamp, SessionWorld world) => state.Phase == SessionPhase.Ready
        ? Asking.Next(state with { Clock = state.Clock.Started(stamp.Now) }, stamp, world)
        : SessionStep.Refused(state, SessionWords.NotNow);

    private static SessionStep Shown(SessionState state, SessionEvent.QuestionShown shown)
    {
        if (state is not { Phase: SessionPhase.Asking, Open: { Id: null } open })
        {
            return SessionStep.Refused(state, SessionWords.NotNow);
        }

        OpenQuestion seen = open with { Id = shown.Stamp.Id, ShownAt = shown.Stamp.Now.Utc, Sound = open.Sound + shown.Sound };
        return SessionStep.To(Clocks.Settle(state with { Open = seen }, shown.Stamp.Now));
    }

    private static SessionStep SoundAgain(SessionState state, SessionEvent.SoundRepeated repeated) =>
        state is { Phase: SessionPhase.Asking, Open: { } open }
            ? SessionStep.To(state with { Open = open with { Sound = open.Sound + repeated.Sound } })
            : SessionStep.To(state);

    private static SessionStep GiveHint(SessionState state)
    {
        if (state is not { Phase: SessionPhase.Asking, Open: { Id: not null } open })
        {
            return SessionStep.Refused(state, SessionWords.NotNow);
        }

        return open.Hints < open.Question.Hints.Length
            ? SessionStep.To(
                state with { Open = open with { Hints = open.Hints + 1 } },
                new SessionEffect.ShowHint(open.Question.Hints[open.Hints], open.Question.Hints.Length - open.Hints - 1))
            : SessionStep.Refused(state, SessionWords.NoMoreHints);
    }

    private static SessionStep Skip(SessionState state, SessionEvent.Skipped skipped, SessionWorld world)
    {
        if (state is not { Phase: SessionPhase.Asking, Open: { } open })
        {
            return SessionStep.Refused(state, SessionWords.NotNow);
        }

        var entry = new QuestionSkipped(skipped.Stamp.Id, skipped.Stamp.Now.Utc, open.Planned.Item.Key, state.Id, skipped.Reason);
        SessionStep next = skipped.Reason switch
        {
            SkipReason.CannotListen => Asking.Next(state with { CanListen = false }, skipped.Stamp, world).Before(new SessionEffect.Notice(SessionWords.SoundGone)),
            SkipReason.HandNeedsRest => Asking.Next(Asking.WithoutHandWork(state), skipped.Stamp, world).Before(new SessionEffect.Notice(SessionWords.RestHand)),
            SkipReason.NoInstrument => Asking.Next(Asking.WithoutHandWork(state), skipped.Stamp, world),
            _ => Asking.Next(state, skipped.Stamp, world),
        };
        return next.Before(new SessionEffect.Store(entry));
    }

    private static SessionStep ChangeSound(SessionState state, SessionEvent.SoundChanged changed, SessionWorld world)
    {
        SessionState heard = state with { CanListen = changed.CanListen };
        return heard.IsPaused ? SessionStep.To(heard) : TakeUp(heard, changed.Stamp, world);
    }

    // A question that can no longer be heard is put aside without a word in the log; while the clock stands it waits.
    private static SessionStep TakeUp(SessionState state, Stamp stamp, SessionWorld world)
    {
        bool isLost = !state.CanListen && state is { Phase: SessionPhase.Asking, Open: { } open } && open.Question.Direction.NeedsSound();
        return isLost ? Asking.Next(state, stamp, world).Before(new SessionEffect.Notice(SessionWords.SoundGone)) : SessionStep.To(state);
    }
}
