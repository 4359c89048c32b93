using Clampwise.Application;
using Clampwise.Practice;

namespace Clampwise.Plain;

/// <summary>
/// A session line by line on plain input and output: for screen readers, pipes and terminals that can't be drawn on. Every drawing
/// is said in words, and nothing hangs on colour or place.
/// </summary>
internal sealed partial class PlainSession : ISessionView
{
    private readonly Desk _desk;
    private readonly TextReader _in;
    private readonly TextWriter _out;
    private int _idle;
    private readonly SessionRun _run;
    private Verdict? _verdict;
    private Fretboard.Setup? _saidSetup;
    private Moment? _revealed;
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

            SessionState before = _run.State;
            // What was typed for a question that went away with the sound is no answer to the next one.
            Question? asked = _run.State.Open?.Question;
            Attend();
            if (ReferenceEquals(asked, _run.State.Open?.Question))
            {
                Take(new TypedLine(line));
            }

            _idle = ReferenceEquals(before, _run.State) ? _idle + 1 : 0;
            if (_idle == EndlessInput.Most)
            {
                _isOver = true;
                _out.WriteLine(EndlessInput.InSession);
            }
        }

        _run.Leave();
        return !_run.HasLost;
    }

    public void ShowQuestion(Question question)
    {
        _out.WriteLine();
        _out.WriteLine(PlainText.Where(_run.State, _desk.Now));
        _revealed = null;
        SayQuestion(isNewSetup: !question.Setup.Equals(_saidSetup));
        _saidSetup = question.Setup;
    }

    public void ShowCard(Card card)
    {
        _out.WriteLine();
        SayAll(PlainText.Card(card, _desk.Settings.Hand));
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
        _desk.Record.Learn(_run.State.Memory);
        if (summary is { Kind: SessionKind.Daily, WasCutShort: false } && _desk.IsDayDone)
        {
            SayAll(PlainText.Done(_desk));
        }
    }

    private void SayQuestion(bool isNewSetup)
    {
        OpenQuestion open = _run.State.Open!;
        SayAll([.. PlainText.Question(open.Question, isNewSetup), .. open.Question.Hints.Take(open.Hints).Select(hint => PlainText.Hint(hint, open.Question))]);
    }

    private void SayVerdict(Grade grade) => SayAll(PlainText.Verdict(_verdict!, grade, _run.State.Open!.Question, _desk.Settings.Hand));

    private void SayAll(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            _out.WriteLine(line);
        }
    }
}
