using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;
using Clampwise.Sound.Performing;

namespace Clampwise.Plain;

/// <summary>
/// A session line by line on plain input and output: for screen readers, pipes and terminals that can't be drawn on. Every drawing
/// is said in words, and nothing hangs on colour or place.
/// </summary>
internal sealed class PlainSession : ISessionView
{
    private const double Slower = 2;
    private readonly Desk _desk;
    private readonly TextReader _in;
    private readonly TextWriter _out;
    private readonly SessionRun _run;
    private Verdict? _verdict;
    private Fretboard.Setup? _saidSetup;
    private bool _isAudible;
    private bool _isOver;

    public PlainSession(Desk desk, SessionState session, TextReader input, TextWriter output)
    {
        (_desk, _in, _out) = (desk, input, output);
        _run = new SessionRun(desk, session, this);
        _isAudible = desk.Sound.IsAudible;
    }

    /// <summary>Runs until the session is over or put down, or the input ends.</summary>
    /// <returns>False if an answer could not be kept.</returns>
    public bool Run()
    {
        _out.WriteLine(PlainText.Begin(_run.State));
        _run.Begin();
        while (!_isOver)
        {
            if (_in.ReadLine() is not { } line)
            {
                Happen(new SessionEvent.CutShort(_desk.Stamp()));
                break;
            }

            Attend();
            Take(new TypedLine(line));
        }

        _run.Leave();
        return !_run.HasLost;
    }

    public void ShowQuestion(Question question)
    {
        _out.WriteLine();
        _out.WriteLine(PlainText.Where(_run.State, _desk.Now));
        SayQuestion(isNewSetup: !question.Setup.Equals(_saidSetup));
        _saidSetup = question.Setup;
    }

    public void ShowHint(Hint hint) => _out.WriteLine(PlainText.Hint(hint, _run.State.Open!.Question));

    public void ShowVerdict(Verdict verdict, Grade grade)
    {
        _verdict = verdict;
        SayVerdict(grade);
    }

    public void ShowGrade(Grade grade) => _out.WriteLine($"Grade: {PlainText.Word(grade)}.");

    public void Say(string words) => _out.WriteLine(words);

    public void Finish(SessionSummary summary)
    {
        _isOver = true;
        SayAll(PlainText.Summary(summary));
    }

    // The device may have come or gone while the line was awaited.
    private void Attend()
    {
        if (!_isOver && _isAudible != _desk.Sound.IsAudible)
        {
            _isAudible = _desk.Sound.IsAudible;
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
            case "setup" when !_run.State.IsPaused:
                SayAll(PlainText.Setup(_run.State.Open!.Question, _run.State.Phase == SessionPhase.Judged));
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

    private void TakeAsking(TypedLine line)
    {
        Question question = _run.State.Open!.Question;
        switch (line.InShort)
        {
            case "":
                return;
            case "hint":
                Happen(new SessionEvent.HintAsked(_desk.Stamp()));
                return;
            case "again" or "hear":
                Heard(_run.PlayAgain(1));
                return;
            case "slower" or "hear slower":
                Heard(_run.PlayAgain(Slower));
                return;
            case "strings" or "hear strings" or "string by string":
                Heard(_run.PlayStrings());
                return;
            case "open" or "hear open":
                Heard(_run.PlayReference());
                return;
            case "question" or "say":
                SayQuestion(isNewSetup: false);
                return;
            case "don't know" or "i don't know" or "dont know" or "?":
                Happen(new SessionEvent.Answered(_desk.Stamp(), new Answer.NotKnown(), TimeSpan.Zero));
                return;
            case "undo":
                _out.WriteLine(PlainText.TooLateToUndo);
                return;
        }

        if (line.First == "skip")
        {
            Skip(line);
        }
        else if (PlainAnswers.Grade(line) is not null)
        {
            _out.WriteLine(PlainText.GradeTooEarly);
        }
        else if (PlainAnswers.Read(question, line).TryGet(out Answer? answer, out Theory.Fault? fault))
        {
            Happen(new SessionEvent.Answered(_desk.Stamp(), answer, TimeSpan.Zero));
        }
        else
        {
            _out.WriteLine(fault.ToString());
        }
    }

    private void Skip(TypedLine line)
    {
        if (PlainAnswers.Reason(line).TryGet(out SkipReason reason, out Theory.Fault? fault))
        {
            Happen(new SessionEvent.Skipped(_desk.Stamp(), reason));
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
                _run.PlayVerdict(verdict);
                return;
            case "slower" or "hear slower":
                _desk.Sound.Play(Perform.Strum(verdict.Right, StrumDirection.Down, _desk.Settings.Style.Slower(Slower)));
                return;
            case "strings" or "hear strings" or "string by string":
                _desk.Sound.Play(Perform.Arpeggio(verdict.Right, ArpeggioPattern.Upward, _desk.Settings.Style));
                return;
            case "differs":
                SayAll(PlainText.Differs(verdict, _run.State.Open!.Question));
                _run.PlayDifference(verdict);
                return;
            case "say" or "verdict":
                SayVerdict(_run.State.Outcomes[^1].Attempt.Grade);
                return;
        }

        if (PlainAnswers.Grade(line) is { } grade)
        {
            Happen(new SessionEvent.GradeOverruled(_desk.Stamp(), grade));
            return;
        }

        _out.WriteLine(PlainText.JudgedWords);
    }

    // The run has told the session of the sound already.
    private void Heard(bool isHeard)
    {
        if (!isHeard)
        {
            _out.WriteLine("There is nothing to hear in this question.");
        }
    }

    private void Happen(SessionEvent happened) => _run.Happen(happened);

    private void SayQuestion(bool isNewSetup)
    {
        OpenQuestion open = _run.State.Open!;
        SayAll([.. PlainText.Question(open.Question, isNewSetup), .. open.Question.Hints.Take(open.Hints).Select(hint => PlainText.Hint(hint, open.Question))]);
    }

    private void SayVerdict(Grade grade) => SayAll(PlainText.Verdict(_verdict!, grade, _run.State.Open!.Question, _desk.Settings.Questions.Hand));

    private void SayAll(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            _out.WriteLine(line);
        }
    }
}
