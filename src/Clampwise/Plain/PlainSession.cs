using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;
using Clampwise.Sound;
using Step = Clampwise.Practice.Session;

namespace Clampwise.Plain;

/// <summary>
/// A session line by line on plain input and output: for screen readers, pipes and terminals that can't be drawn on. Every drawing
/// is said in words, and nothing hangs on colour or place.
/// </summary>
internal sealed class PlainSession
{
    private readonly Desk _desk;
    private readonly TextReader _in;
    private readonly TextWriter _out;
    private readonly SessionVoice _voice;
    private SessionState _state;
    private Verdict? _verdict;
    private bool _isOver;

    public PlainSession(Desk desk, SessionState session, TextReader input, TextWriter output)
    {
        (_desk, _state, _in, _out) = (desk, session, input, output);
        _voice = new SessionVoice(desk);
    }

    /// <summary>Runs until the session is over or the input ends.</summary>
    public void Run()
    {
        Happen(new SessionEvent.Begun(_desk.Stamp()));
        while (!_isOver)
        {
            if (_in.ReadLine() is not { } line)
            {
                Happen(new SessionEvent.CutShort(_desk.Stamp()));
                break;
            }

            Take(line.Trim());
        }

        _desk.Sound.Stop();
        _desk.Learn(_state.Memory);
    }

    private void Take(string line)
    {
        if (line.Length == 0 && _state.Phase != SessionPhase.Judged)
        {
            return;
        }

        SessionEvent? happened = _state.Phase == SessionPhase.Judged ? Judged(line) : Asking(line);
        if (happened is not null)
        {
            Happen(happened);
        }
    }

    private SessionEvent? Asking(string line)
    {
        Question question = _state.Open!.Question;
        switch (line.ToLowerInvariant())
        {
            case "hint":
                return new SessionEvent.HintAsked(_desk.Stamp());
            case "again":
                return Repeat(_voice.Again(question, 1));
            case "slower":
                return Repeat(_voice.Again(question, 2));
            case "strings":
                return Repeat(_voice.StringByString(question));
            case "open":
                return Repeat(_voice.Reference(question));
            case "question":
                Say(PlainText.Question(question));
                return null;
            case "skip":
                return new SessionEvent.Skipped(_desk.Stamp(), SkipReason.NotNow);
            case "don't know" or "dont know" or "?":
                return new SessionEvent.Answered(_desk.Stamp(), new Answer.NotKnown(), TimeSpan.Zero);
            case "end":
                return new SessionEvent.CutShort(_desk.Stamp());
            case "help":
                Say(PlainText.Help);
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
                _desk.Sound.Play(_voice.Verdict(_verdict!));
                return null;
            case "differs":
                _desk.Sound.Play(_voice.Difference(_verdict!));
                return null;
        }

        if (Enum.TryParse(line, ignoreCase: true, out Grade grade) && Enum.IsDefined(grade) && !char.IsDigit(line[0]))
        {
            return new SessionEvent.GradeOverruled(_desk.Stamp(), grade);
        }

        _out.WriteLine("Enter for the next question; or again, differs, undo, end, or a grade: missed, strained, steady, instant.");
        return null;
    }

    private SessionEvent.SoundRepeated? Repeat(Performance? performance)
    {
        if (performance is null)
        {
            _out.WriteLine("There is nothing to hear in this question.");
            return null;
        }

        _desk.Sound.Play(performance);
        return new SessionEvent.SoundRepeated(_desk.Stamp(), performance.End);
    }

    private void Happen(SessionEvent happened)
    {
        SessionStep step = Step.Step(_state, happened, _desk.World);
        _state = step.State;
        foreach (SessionEffect effect in step.Effects)
        {
            CarryOut(effect);
        }
    }

    private void CarryOut(SessionEffect effect)
    {
        switch (effect)
        {
            case SessionEffect.Show show:
                Show(show.Question);
                break;
            case SessionEffect.ShowHint shown:
                _out.WriteLine($"Hint: {shown.Hint.Words}");
                break;
            case SessionEffect.Store store when _desk.Log.Append(store.Entry) is { } fault:
                _out.WriteLine(fault.ToString());
                break;
            case SessionEffect.ShowVerdict shown:
                _verdict = shown.Verdict;
                Say(PlainText.Verdict(shown.Verdict, shown.Grade, _state.Open!.Question));
                _desk.Sound.Play(_voice.Verdict(shown.Verdict));
                break;
            case SessionEffect.ShowGrade shown:
                _out.WriteLine($"Grade: {shown.Grade.ToString().ToLowerInvariant()}");
                break;
            case SessionEffect.Refuse refused:
                _out.WriteLine(refused.Fault.ToString());
                break;
            case SessionEffect.Notice notice:
                _out.WriteLine(notice.Words);
                break;
            case SessionEffect.Finish finish:
                _isOver = true;
                Say(PlainText.Summary(finish.Summary));
                break;
        }
    }

    private void Show(Question question)
    {
        _out.WriteLine();
        _out.WriteLine($"{SessionText.Progress(_state, _desk.Now)}.");
        Say(PlainText.Question(question));
        Performance? sound = _voice.Question(question);
        if (sound is not null)
        {
            _desk.Sound.Play(sound);
        }

        Happen(new SessionEvent.QuestionShown(_desk.Stamp(), sound?.End ?? TimeSpan.Zero));
    }

    private void Say(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            _out.WriteLine(line);
        }
    }
}
