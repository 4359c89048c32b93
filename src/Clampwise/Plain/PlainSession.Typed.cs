using Clampwise.Application;
using Clampwise.Practice;
using Clampwise.Sound.Performing;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <content>What is typed: words that serve at any time, then those of an open question, of a verdict, of a pause.</content>
internal sealed partial class PlainSession
{
    private const double Slower = 2;

    // The device may have come or gone while the line was awaited.
    private void Attend()
    {
        if (!_isOver && _isAudible != _desk.Sound.IsAudible)
        {
            _isAudible = _desk.Sound.IsAudible;
            _out.WriteLine(_desk.Sound.Notice ?? (_isAudible ? "Sound is back." : "There is no sound."));
            Happen(new SessionEvent.SoundChanged(_desk.Stamp(), _isAudible));
        }
    }

    private void Take(TypedLine line)
    {
        if (!_isOver && !TakeAnywhere(line.InShort))
        {
            Action<TypedLine> take = _run.State switch
            {
                { IsPaused: true } => TakePaused,
                { Card: not null } => TakeCard,
                { Phase: SessionPhase.Judged } => TakeJudged,
                _ => TakeAsking,
            };
            take(line);
        }
    }

    private bool TakeAnywhere(string words)
    {
        switch (words)
        {
            case "end" or "quit" or "exit":
                Happen(new SessionEvent.CutShort(_desk.Stamp()));
                return true;
            case "later":
                _isOver = true;
                _out.WriteLine(PlainText.PutDown);
                return true;
            case "help":
                SayAll(PlainText.Help);
                return true;
            case "setup" when _run.State is { IsPaused: false, Open: { } open }:
                SayAll(PlainText.Setup(open.Question, _run.State.Phase == SessionPhase.Judged));
                return true;
            case "clock":
                _out.WriteLine(PlainText.Where(_run.State, _desk.Now));
                return true;
            case "pause" when !_run.State.IsPaused:
                Happen(new SessionEvent.Paused(_desk.Stamp()));
                SayAll(PlainText.Paused(_run.State, _desk.Now));
                return true;
            default:
                return false;
        }
    }

    private void TakePaused(TypedLine line)
    {
        if (line.InShort is not ("" or "go on" or "on" or "pause"))
        {
            _out.WriteLine(PlainText.PausedWords);
            return;
        }

        Happen(new SessionEvent.TakenUp(_desk.Stamp()));
        if (_run.State is { Phase: SessionPhase.Judged })
        {
            _out.WriteLine(PlainText.JudgedWords);
        }
        else if (_run.State is { Phase: SessionPhase.Asking })
        {
            _out.WriteLine(PlainText.Where(_run.State, _desk.Now));
            SayQuestion(isNewSetup: false);
        }
    }

    private void TakeCard(TypedLine line)
    {
        Card card = _run.State.Card!;
        switch (line.InShort)
        {
            case "" or "next":
                Happen(new SessionEvent.WentOn(_desk.Stamp()));
                return;
            case "again" or "hear" when card is Card.NewShape:
                Heard(_run.PlayCard());
                return;
            case "say" or "question" or "setup":
                SayAll(PlainText.Card(card, _desk.Settings.Hand));
                return;
            default:
                _out.WriteLine(PlainText.CardKeys(card));
                return;
        }
    }

    // Shown and heard, the rest is the player's to say.
    private void Reveal(Question question)
    {
        _revealed ??= _desk.Now;
        SayAll(PlainText.Revealed(question, _desk.Settings.Hand));
        _ = _run.PlayShape();
    }

    private void TakeAsking(TypedLine line)
    {
        Question question = _run.State.Open!.Question;
        if (question.Form == AnswerForm.Play && line.InShort is ("" or "look"))
        {
            Reveal(question);
        }
        else if (_revealed is { } since && PlainAnswers.Grade(line) is { } own)
        {
            Happen(new SessionEvent.Answered(_desk.Stamp(), new Answer.Played(own), _desk.Now.Running - since.Running));
        }
        else if (line.Words.Count == 0)
        {
            SayAll(PlainText.QuestionInShort(question));
        }
        else if (TakeWord(line.InShort))
        {
            return;
        }
        else if (line.First == "skip")
        {
            Take(PlainAnswers.Reason(line), Skipped);
        }
        else if (PlainText.AtAnotherTime(line.InShort, question) is { } when)
        {
            _out.WriteLine(when);
        }
        else if (PlainAnswers.Grade(line) is not null)
        {
            _out.WriteLine(PlainText.GradeTooEarly);
        }
        else
        {
            Take(PlainAnswers.Read(question, line), Answered);
        }
    }

    private bool TakeWord(string words)
    {
        switch (words)
        {
            case "hint":
                Happen(new SessionEvent.HintAsked(_desk.Stamp()));
                return true;
            case "again" or "hear":
                return Heard(_run.PlayAgain(1));
            case "slower" or "hear slower":
                return Heard(_run.PlayAgain(Slower));
            case "strings" or "hear strings" or "string by string":
                return Heard(_run.PlayStrings());
            case "open" or "hear open":
                return Heard(_run.PlayReference());
            case "question" or "say":
                SayQuestion(isNewSetup: false);
                return true;
            case "don't know" or "i don't know" or "dont know" or "?":
                Happen(Answered(new Answer.NotKnown()));
                return true;
            case "undo":
                _out.WriteLine(PlainText.TooLateToUndo);
                return true;
            default:
                return false;
        }
    }

    private SessionEvent.Skipped Skipped(SkipReason reason)
    {
        _out.WriteLine(PlainText.PutAside(reason));
        return new SessionEvent.Skipped(_desk.Stamp(), reason);
    }

    // Nobody sees when the first key went down: all the time counts as thinking.
    private SessionEvent.Answered Answered(Answer answer) => new(_desk.Stamp(), answer, TimeSpan.Zero);

    private void Take<T>(Result<T> read, Func<T, SessionEvent> happened)
        where T : notnull
    {
        if (read.TryGet(out T? value, out Fault? fault))
        {
            Happen(happened(value));
        }
        else
        {
            _out.WriteLine(fault.ToString());
        }
    }

    private void TakeJudged(TypedLine line)
    {
        Verdict verdict = _verdict!;
        switch (line.InShort)
        {
            case "" or "next":
                Happen(new SessionEvent.WentOn(_desk.Stamp()));
                return;
            case "undo":
                Happen(new SessionEvent.AnswerUndone(_desk.Stamp()));
                return;
            case "again" or "hear":
                Play(() => _run.PlayVerdict(verdict));
                return;
            case "slower" or "hear slower":
                Play(() => _desk.Sound.Play(Perform.Strum(verdict.RightVoicing, StrumDirection.Down, _desk.Settings.Style.Slower(Slower))));
                return;
            case "strings" or "hear strings" or "string by string":
                Play(() => _desk.Sound.Play(Perform.Arpeggio(verdict.RightVoicing, ArpeggioPattern.Upward, _desk.Settings.Style)));
                return;
            case "differs":
                SayAll(PlainText.Differs(verdict, _run.State.Open!.Question));
                PlayDifference(verdict);
                return;
            case "say" or "verdict":
                SayVerdict(_run.State.Outcomes[^1].Attempt.Grade);
                return;
        }

        if (PlainAnswers.Grade(line) is { } grade)
        {
            Happen(new SessionEvent.Regraded(_desk.Stamp(), grade));
            return;
        }

        _out.WriteLine(PlainText.JudgedWords);
    }

    // The run has told the session of the sound already.
    private bool Heard(bool isHeard)
    {
        if (!isHeard)
        {
            _out.WriteLine(SessionInWords.NothingHeard(_desk.Sound.IsAudible));
        }

        return true;
    }

    private void Play(Action play)
    {
        if (_desk.Sound.IsAudible)
        {
            play();
            return;
        }

        _out.WriteLine(SessionInWords.NothingHeard(isAudible: false));
    }

    // It is said in words anyway: silence needs no line of its own.
    private void PlayDifference(Verdict verdict)
    {
        if (_desk.Sound.IsAudible && !verdict.DidNotKnow)
        {
            _run.PlayDifference(verdict);
        }
    }

    private void Happen(SessionEvent happened) => _run.Happen(happened);
}
