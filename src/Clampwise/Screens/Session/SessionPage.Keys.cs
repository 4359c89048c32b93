using Clampwise.Application;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>The keys of a session: of an open question, of its verdict, of a pause, and of the reasons to skip.</summary>
internal sealed partial class SessionPage
{
    public override IReadOnlyList<PageKey> Keys => State switch
    {
        { IsPaused: true } => PausedKeys,
        { Phase: SessionPhase.Showing } => CardKeys,
        { Phase: SessionPhase.Judged } => [.. JudgedKeys(_verdict!)],
        _ when _isSkipping => SkipKeys,
        _ => [.. PadKeys, .. IsTyping ? TypingKeys : AskingKeys],
    };

    private PageKey[] PausedKeys =>
    [
        PageKey.On(KeyPress.Enter, "go on", () => Happen(new SessionEvent.TakenUp(_desk.Stamp()))).Or(KeyPress.Space).Or('p'),
        PageKey.On('e', "end here", () => Happen(new SessionEvent.CutShort(_desk.Stamp()))),
        PageKey.On(KeyPress.Esc, "back to today", _frame.Close),
    ];

    private PageKey[] CardKeys =>
    [
        PageKey.On(KeyPress.Enter, State.Card is Card.NewShape ? "played it" : "on, and in tune", () => Happen(new SessionEvent.WentOn(_desk.Stamp()))).Or(KeyPress.Space),
        .. State.Card is Card.ClampsMove { Setup: var setup }
            ? [PageKey.On('t', "tune", () => _frame.Open(new TunePage(_frame, _desk, setup)))]
            : (PageKey[])[Audible(PageKey.On('r', "again", () => Say(_run.PlayCard())))],
        PageKey.On(KeyPress.Esc, "pause", Pause).Or('p'),
    ];

    private PageKey[] SkipKeys =>
    [
        PageKey.Digits(1, SessionInWords.Reasons.Count, "reason", Skip),
        PageKey.On(KeyPress.Esc, "keep the question", () => _isSkipping = false) with { TakesAny = true },
    ];

    // The first of them since the question came starts the time that typing or placing takes.
    private IEnumerable<PageKey> PadKeys => (_pad?.Keys(Answer) ?? []).Select(key => key with
    {
        Act = press =>
        {
            _firstKey ??= _desk.Now;
            key.Act(press);
        },
    });

    private bool HasHint => State.Open is { } open && open.Hints < open.Question.Hints.Length;

    private bool IsHeard => _desk.Sound.IsAudible && State.Open is { Question.Played.IsEmpty: false };

    private PageKey[] AskingKeys =>
    [
        Heard(PageKey.On('r', "again", () => PlayAgain(1))),
        Heard(PageKey.On('l', "slower", () => PlayAgain(2))),
        Heard(PageKey.On('g', "string by string", PlayStrings)),
        .. _pad is { IsRevealed: true } ? Array.Empty<PageKey>() : HelpKeys,
        PageKey.On('n', "skip", () => _isSkipping = true),
        PageKey.On(KeyPress.Esc, "pause", Pause).Or('p'),
        Audible(PageKey.On('e', "open strings", PlayReference)),
    ];

    private PageKey[] HelpKeys =>
    [
        PageKey.On('h', "hint", GiveHint) with { IsOnLine = HasHint },
        PageKey.On('k', "don't know", () => Answer(new Answer.NotKnown())),
        .. State.Open?.Question.Direction == Direction.NamePlaceShape
            ? [PageKey.On('i', _desk.Settings.HasGuitar ? "on the screen" : "on the guitar", TurnGuitar)]
            : Array.Empty<PageKey>(),
    ];

    // Letters belong to the name then.
    private PageKey[] TypingKeys =>
    [
        PageKey.On(KeyPress.F(6), "hint", GiveHint) with { IsOnLine = HasHint },
        PageKey.On(KeyPress.F(7), "don't know", () => Answer(new Answer.NotKnown())),
        Heard(PageKey.On(KeyPress.F(2), "again", () => PlayAgain(1))),
        PageKey.On(KeyPress.F(8), "skip", () => _isSkipping = true),
        .. _pad!.TakesEsc ? Array.Empty<PageKey>() : [PageKey.On(KeyPress.Esc, "pause", Pause)],
        Heard(PageKey.On(KeyPress.F(3), "slower", () => PlayAgain(2))),
        Heard(PageKey.On(KeyPress.F(4), "string by string", PlayStrings)),
        Audible(PageKey.On(KeyPress.F(5), "open strings", PlayReference)),
    ];

    private IEnumerable<PageKey> JudgedKeys(VerdictView verdict)
    {
        yield return PageKey.On(KeyPress.Enter, "next", () => Happen(new SessionEvent.WentOn(_desk.Stamp()))).Or(KeyPress.Space);
        yield return Audible(PageKey.On('r', "again", () => Play(_run.PlayVerdict)));
        yield return Audible(PageKey.On('d', verdict.HasOther ? "what differs" : "by string", () => Play(_run.PlayDifference)));
        if (verdict.HasOther)
        {
            yield return PageKey.On('b', verdict.ShowsBoth ? "one" : "both", verdict.TurnBoth);
            yield return PageKey.On('y', verdict.ShowsAnswer ? "the right one" : "yours", verdict.Turn);
        }

        yield return PageKey.On('u', "undo", () => Happen(new SessionEvent.AnswerUndone(_desk.Stamp())));
        yield return PageKey.Steps(KeyPress.Up, KeyPress.Down, "grade", step => Regrade(-step));
        yield return PageKey.On(KeyPress.Esc, "pause", Pause).Or('p');
    }

    // Where nothing sounds the key says why; it takes no room on the key line.
    private PageKey Audible(PageKey key) => key with { IsOnLine = _desk.Sound.IsAudible };

    private PageKey Heard(PageKey key) => key with { IsOnLine = IsHeard };

    private void PlayAgain(int slower) => Say(_run.PlayAgain(slower));

    private void PlayStrings() => Say(_run.PlayStrings());

    private void PlayReference() => Say(_run.PlayReference());

    private void GiveHint() => Happen(new SessionEvent.HintAsked(_desk.Stamp()));

    private void Pause() => Happen(new SessionEvent.Paused(_desk.Stamp()));

    private void Skip(int number)
    {
        _isSkipping = false;
        Happen(new SessionEvent.Skipped(_desk.Stamp(), SessionInWords.Reasons[number - 1].Reason));
    }

    // One step up or down; at either end nothing more is written.
    private void Regrade(int step)
    {
        Grade grade = State.Outcomes[^1].Attempt.Grade;
        var stepped = (Grade)Math.Clamp((int)grade + step, (int)Grade.Missed, (int)Grade.Instant);
        if (stepped != grade)
        {
            Happen(new SessionEvent.Regraded(_desk.Stamp(), stepped));
        }
    }

    private void Play(Action<Verdict> how)
    {
        if (_desk.Sound.IsAudible)
        {
            how(_verdict!.Verdict);
        }

        Say(_desk.Sound.IsAudible);
    }

    private void Say(bool isHeard) => _notice = isHeard ? _notice : SessionInWords.NothingHeard(_desk.Sound.IsAudible);
}
