namespace Clampwise.Practice;

/// <summary>What happens to a session, each with its stamp.</summary>
public abstract record SessionEvent(Stamp Stamp)
{
    /// <summary>The session begins, or is taken up again after the program was left.</summary>
    public sealed record Begun(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>The question stands on the screen; thinking starts.</summary>
    /// <param name="Stamp">Its id becomes the id of the attempt.</param>
    /// <param name="Sound">How long its sound lasts; zero without.</param>
    public sealed record QuestionShown(Stamp Stamp, TimeSpan Sound) : SessionEvent(Stamp);

    /// <summary>The sound was played once more, at no cost in grade.</summary>
    /// <param name="Stamp">When.</param>
    /// <param name="Sound">How long it lasts.</param>
    public sealed record SoundRepeated(Stamp Stamp, TimeSpan Sound) : SessionEvent(Stamp);

    /// <summary>The next hint was asked for.</summary>
    public sealed record HintAsked(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>An answer was given.</summary>
    /// <param name="Stamp">When.</param>
    /// <param name="Answer">The answer.</param>
    /// <param name="Entry">How long it took to type or place it, from the first key on; it is no thinking time.</param>
    public sealed record Answered(Stamp Stamp, Answer Answer, TimeSpan Entry) : SessionEvent(Stamp);

    /// <summary>The player says how well the last answer really went.</summary>
    public sealed record Regraded(Stamp Stamp, Grade Grade) : SessionEvent(Stamp);

    /// <summary>The last answer is taken back, and its question asked again.</summary>
    public sealed record AnswerUndone(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>The question is put aside.</summary>
    public sealed record Skipped(Stamp Stamp, SkipReason Reason) : SessionEvent(Stamp);

    /// <summary>The verdict or the card has been read; on to what comes next.</summary>
    public sealed record WentOn(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>The clock is stopped.</summary>
    public sealed record Paused(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>The clock is taken up again.</summary>
    public sealed record TakenUp(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>The terminal lost its focus: from here on nothing counts as thinking.</summary>
    public sealed record FocusLost(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>The terminal has its focus again.</summary>
    public sealed record FocusGained(Stamp Stamp) : SessionEvent(Stamp);

    /// <summary>Sound came or went.</summary>
    public sealed record SoundChanged(Stamp Stamp, bool CanListen) : SessionEvent(Stamp);

    /// <summary>The player ends the session.</summary>
    public sealed record CutShort(Stamp Stamp) : SessionEvent(Stamp);
}
