using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;

namespace Clampwise.Plain;

/// <summary>
/// A session line by line on plain input and output: for screen readers, pipes and terminals that can't be drawn on. Every drawing
/// is said in words, and nothing hangs on colour or place.
/// </summary>
internal sealed class PlainSession : ISessionView
{
    private readonly Desk _desk;
    private readonly TextReader _in;
    private readonly TextWriter _out;
    private readonly SessionRun _run;
    private Verdict? _verdict;
    private bool _isOver;

    public PlainSession(Desk desk, SessionState session, TextReader input, TextWriter output)
    {
        (_desk, _in, _out) = (desk, input, output);
        _run = new SessionRun(desk, session, this);
    }

    /// <summary>Runs until the session is over or the input ends.</summary>
    /// <returns>False if an answer could not be kept.</returns>
    public bool Run()
    {
        _run.Begin();
        while (!_isOver)
        {
            if (_in.ReadLine() is not { } line)
            {
                _run.Happen(new SessionEvent.CutShort(_desk.Stamp()));
                break;
            }

            Take(line.Trim());
        }

        _run.Leave();
        return !_run.HasLost;
    }

    public void ShowQuestion(Question question)
    {
        _out.WriteLine();
        _out.WriteLine($"{SessionText.Progress(_run.State, _desk.Now)}.");
        SayAll(PlainText.Question(question));
    }

    public void ShowHint(Hint hint) => _out.WriteLine($"Hint: {hint.Words}");

    public void ShowVerdict(Verdict verdict, Grade grade)
    {
        _verdict = verdict;
        SayAll(PlainText.Verdict(verdict, grade, _run.State.Open!.Question));
    }

    public void ShowGrade(Grade grade) => _out.WriteLine($"Grade: {grade.ToString().ToLowerInvariant()}");

    public void Say(string words) => _out.WriteLine(words);

    public void Finish(SessionSummary summary)
    {
        _isOver = true;
        SayAll(PlainText.Summary(summary));
    }

    private void Take(string line)
    {
        if (line.Length == 0 && _run.State.Phase != SessionPhase.Judged)
        {
            return;
        }

        SessionEvent? happened = _run.State.Phase == SessionPhase.Judged ? Judged(line) : Asking(line);
        if (happened is not null)
        {
            _run.Happen(happened);
        }
    }

    private SessionEvent? Asking(string line)
    {
        Question question = _run.State.Open!.Question;
        switch (line.ToLowerInvariant())
        {
            case "hint":
                return new SessionEvent.HintAsked(_desk.Stamp());
            case "again":
                return Heard(_run.PlayAgain(1));
            case "slower":
                return Heard(_run.PlayAgain(2));
            case "strings":
                return Heard(_run.PlayStrings());
            case "open":
                return Heard(_run.PlayReference());
            case "question":
                SayAll(PlainText.Question(question));
                return null;
            case "skip":
                return new SessionEvent.Skipped(_desk.Stamp(), SkipReason.NotNow);
            case "don't know" or "dont know" or "?":
                return new SessionEvent.Answered(_desk.Stamp(), new Answer.NotKnown(), TimeSpan.Zero);
            case "end":
                return new SessionEvent.CutShort(_desk.Stamp());
            case "help":
                SayAll(PlainText.Help);
                return null;
        }

        if (PlainAnswers.Read(question, line).TryGet(out Answer? answer, out Theory.Fault? fault))
        {
            return new SessionEvent.Answered(_desk.Stamp(), answer, TimeSpan.Zero);
        }

        _out.WriteLine(fault.ToString());
        return null;
    }

    private SessionEvent? Judged(string line)
    {
        switch (line.ToLowerInvariant())
        {
            case "" or "next":
                return new SessionEvent.WentOn(_desk.Stamp());
            case "undo":
                return new SessionEvent.AnswerUndone(_desk.Stamp());
            case "end":
                return new SessionEvent.CutShort(_desk.Stamp());
            case "again":
                _run.PlayVerdict(_verdict!);
                return null;
            case "differs":
                _run.PlayDifference(_verdict!);
                return null;
        }

        if (Enum.TryParse(line, ignoreCase: true, out Grade grade) && Enum.IsDefined(grade) && !char.IsDigit(line[0]))
        {
            return new SessionEvent.GradeOverruled(_desk.Stamp(), grade);
        }

        _out.WriteLine("Enter for the next question; or again, differs, undo, end, or a grade: missed, strained, steady, instant.");
        return null;
    }

    // The run has told the session of the sound already.
    private SessionEvent? Heard(bool isHeard)
    {
        if (!isHeard)
        {
            _out.WriteLine("There is nothing to hear in this question.");
        }

        return null;
    }

    private void SayAll(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            _out.WriteLine(line);
        }
    }
}
