using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>What plain sessions say.</summary>
internal static class PlainText
{
    public const string PutDown = "Put down. Everything answered is kept, and the session waits until the end of the day.";
    public const string PausedWords = "The clock stands: Enter goes on, later puts the session down, end ends it.";
    public const string JudgedWords = "Enter for the next question; or again, slower, strings, differs, say, setup, undo, pause, later, end, or a grade: missed, strained, steady, instant.";
    public const string NothingToCompare = "There was no answer to compare with the right one.";
    public const string TooLateToUndo = "An answer can be taken back only before the next question.";
    public const string GradeTooEarly = "A grade belongs to an answer: give one first.";

    /// <summary>What can be typed, and what the grades mean.</summary>
    public static IReadOnlyList<string> Help { get; } =
    [
        "To answer: the number of a choice, a chord name, or a fretting, lowest string first, from the nut (x04600) or after ^ from the home clamp (^ x 0 2 4 0 0). don't know is an answer too.",
        "At a card: Enter goes on when the clamp is on and in tune, or the new shape is played. With the guitar in hand a name is played: Enter or look shows the shape, then a grade says how it went; a fretting answers too.",
        "For two voicings: same, or different with the strings that moved (different 3). For changes in a minute: their number.",
        "At no cost: again, slower, strings (one after another), open (all open strings), question (say it once more), setup (the clamps), clock. hint costs grade.",
        $"To put a question aside: {PlainAnswers.Reasons}. skip alone is skip now.",
        "pause stops the clock, Enter takes it up. later puts the session down until you start it again today. end ends it with its summary.",
        "After the verdict: Enter or next goes on, again plays it, differs says and plays what differs, say says it once more, undo takes the answer back.",
        "Grades, to type after the verdict if you know better how it went:",
        .. SessionInWords.GradesInWords,
        .. Cautions.All,
    ];

    /// <summary>The first line of a session.</summary>
    public static string Begin(SessionState state)
    {
        string title = SessionInWords.Title(state.Kind, state.Title);
        string capital = $"{char.ToUpperInvariant(title[0])}{title[1..]}{Few(state)}";
        return state.Outcomes.IsEmpty ? $"{capital}. Type help for what can be typed." : $"{capital}, taken up again. Type help for what can be typed.";
    }

    /// <summary>The question in short, for whoever waits at it.</summary>
    public static IEnumerable<string> QuestionInShort(Question question) =>
    [
        $"{question.Ask}{HowToAnswer(question)}",
        .. question.Choices.IsEmpty || IsPicked(question) ? Array.Empty<string>() : [string.Join("; ", question.Choices.Select((choice, index) => $"{index + 1}: {choice.Text}"))],
    ];

    /// <summary>What a shape is to be typed as.</summary>
    public static string WantedShape(Fretboard.Setup setup, string found)
    {
        int count = setup.StringCount;
        return $"expected the frets of all {count} strings, lowest first: from the nut ({new string('0', count)}), or after ^ from the home clamp (^{string.Concat(Enumerable.Repeat(" 0", count))}), x for a muted one; found '{found}'";
    }

    /// <summary>What a word is for that has no place at an open question; null if it is none of these, or serves here.</summary>
    public static string? AtAnotherTime(string word, Question question) => word switch
    {
        "next" => "next goes on after an answer. To put this question aside: skip.",
        "differs" => "differs serves after an answer: it says how that differs from the right one.",
        "verdict" => "verdict serves after an answer: it says once more what that was worth.",
        "go on" or "on" => "The clock runs; go on serves after pause.",
        "same" or "the same" or "different" or "differ" when question.Form != AnswerForm.Compare => $"{word} answers where two voicings are heard.{HowToAnswer(question)}",
        _ => null,
    };

    /// <summary>A card in words: where the clamps go, or a new shape with all its strings.</summary>
    public static IEnumerable<string> Card(Card card, Hand hand) => card switch
    {
        Card.ClampsMove move => [CardWords.Do(move), .. SetupWords.Lines(move.Setup), CardWords.Clock, CardKeys(card)],
        Card.NewShape shape =>
        [
            CardWords.Names(shape),
            VoicingText.Names(shape.Item.Subject.Voicing),
            .. VoicingText.Strings(shape.Item.Subject.Voicing, hand),
            .. shape.Like is { } like ? [like.Words] : Array.Empty<string>(),
            .. shape.Item.Subject.Note is { } note ? [$"Note: {note}"] : Array.Empty<string>(),
            CardWords.Play,
            CardKeys(card),
        ],
        _ => throw new ArgumentOutOfRangeException(nameof(card), card, "a card that nothing says"),
    };

    /// <summary>What can be typed at a card.</summary>
    public static string CardKeys(Card card) => card is Card.NewShape
        ? "Enter when you have played it; or again, say, pause, later, end."
        : "Enter when it is on and in tune; or say, pause, later, end.";

    /// <summary>A shape that was played on the guitar, and how to say how it went.</summary>
    public static IEnumerable<string> Revealed(Question question, Hand hand) =>
        [VoicingText.Names(question.Subject), .. VoicingText.Strings(question.Subject, hand), "How did it go: missed, strained, steady or instant?"];

    /// <summary>What is said of a question put aside.</summary>
    public static string PutAside(SkipReason reason) => $"Put aside: {SessionInWords.Reasons.First(known => known.Reason == reason).Words}.";

    /// <summary>What is said instead of starting one session while another waits: which it is, and how to take it up or to end it.</summary>
    public static string AnotherWaits(SessionState waiting, Desk desk)
    {
        string command = waiting.Kind switch
        {
            SessionKind.Quiz => "quiz",
            SessionKind.Weak => "weak",
            _ => desk.Shelf.Drills.FirstOrDefault(drill => drill.Title == waiting.Title) is { } drill ? $"drill {drill.Id}" : "drill",
        };
        return $"a session waits: {SessionInWords.InShort(waiting, desk.Now)}. 'clampwise {command} --plain' takes it up; --new ends it, with its answers kept, and starts this one";
    }

    /// <summary>Where the session stands: the drill, why it asks, what is answered, time and questions left.</summary>
    public static string Where(SessionState state, Moment now)
    {
        int toCome = state.Queue.Length + (state.Length is null ? state.Close.Length : state.ClosersLeft) + (state.Phase == SessionPhase.Asking ? 1 : 0);
        string left = state.LeftAt(now) is { } time ? $"{SessionInWords.Clock(time > TimeSpan.Zero ? time : TimeSpan.Zero)} left, " : "";
        string planned = state.Open is { } open ? $" {open.Planned.Item.Drill.Title}{Part(open.Planned.Part)}." : "";
        return $"{state.Outcomes.Length} answered, {left}{toCome} to come.{planned}";
    }

    /// <summary>The question with everything that is drawn; a setup that was said before is only named.</summary>
    public static IEnumerable<string> Question(Question question, bool isNewSetup)
    {
        foreach (string line in isNewSetup ? Setup(question, isJudged: false) : [$"Setup {question.Setup}."])
        {
            yield return line;
        }

        foreach (Voicing drawn in IsPicked(question) ? [] : question.Drawn)
        {
            string name = question.Form == AnswerForm.CountChanges ? $"{drawn.ShapeName}, " : "";
            yield return $"Shape {name}{drawn.Fretting.ToHomeText(drawn.Setup)}, from the nut {drawn.Fretting}.";
            foreach (string line in ShapeWords.Lines(drawn))
            {
                yield return line;
            }
        }

        yield return $"{question.Ask}{HowToAnswer(question)}";
        for (int i = 0; i < question.Choices.Length; i++)
        {
            yield return $"{i + 1}: {ChoiceWords(question, question.Choices[i])}";
        }
    }

    /// <summary>The setup. What the open strings sound would say half the name of a shape that is drawn, so there it waits for the verdict.</summary>
    public static IEnumerable<string> Setup(Question question, bool isJudged) =>
        isJudged || question.Drawn.IsEmpty || IsPicked(question) ? SetupWords.Lines(question.Setup) : [SetupWords.Held(question.Setup)];

    /// <summary>A hint with what it shows.</summary>
    public static string Hint(Hint hint, Question question)
    {
        string[] shown = [.. question.Subject.Strings.Where(sounding => hint.Shown.Contains(sounding.Number) && sounding.Stop.IsFretted)
            .Select(sounding => $" String {sounding.Number} at fret {sounding.Stop.Finger}.")];
        string ruledOut = hint.RuledOut.IsEmpty ? "" : $" Not {string.Join(", not ", hint.RuledOut.Order().Select(index => $"{index + 1}"))}.";
        return $"Hint: {hint.Words}{string.Concat(shown)}{ruledOut}";
    }

    /// <summary>The verdict: what it was, both names, every string, how the answer differs, the note of the drill, the grade.</summary>
    public static IEnumerable<string> Verdict(Verdict verdict, Grade grade, Question question, Hand hand) =>
    [
        Headline(verdict, question),
        VoicingText.Names(verdict.RightVoicing),
        .. VoicingText.Strings(verdict.RightVoicing, hand),
        .. verdict.Remark is { } remark ? [remark] : Array.Empty<string>(),
        .. Other(verdict, question) is null ? [] : Differs(verdict, question),
        .. question.Item.Subject.Note is { } note ? [$"Note: {note}"] : Array.Empty<string>(),
        $"Grade: {Word(grade)}. Enter for the next question.",
    ];

    /// <summary>How what was answered, or the second of two voicings, differs from the right one.</summary>
    public static IEnumerable<string> Differs(Verdict verdict, Question question) => verdict.DidNotKnow ? [NothingToCompare] : Other(verdict, question) is { } other
        ? [VoicingText.NamesOf(Label(question, isFirst: true), other), .. VoicingText.Differences(verdict.RightVoicing, other, Label(question, isFirst: false))]
        : ["Nothing differs from the right one."];

    /// <summary>What is said when the clock is stopped.</summary>
    public static IEnumerable<string> Paused(SessionState state, Moment now) =>
        [$"The clock stands at {SessionInWords.Clock(state.Clock.At(now))}. Everything answered so far is kept. Let the hands hang for a moment.", PausedWords];

    public static IEnumerable<string> Summary(SessionSummary summary) =>
    [
        "",
        summary.Words,
        $"{SessionInWords.Clock(summary.Practised)} practised{(summary.WasCutShort ? ", ended early" : "")}; {summary.FirstSights} met for the first time.",
        string.Join(", ", Enum.GetValues<Grade>().Reverse().Select(grade => $"{Word(grade)} {summary.Grades[grade]}")),
        .. summary.Missed.Select(missed => $"Look at again: {OutcomeWords(missed)}."),
        .. summary.Strengthened.Take(3).Select(outcome => $"Lasts longer now, about {Days(outcome.StabilityAfter)}: {OutcomeWords(outcome)}."),
        $"{(summary.DueTomorrow == 0 ? "Nothing is" : $"{summary.DueTomorrow}")} due on the next practice day. Take the clamp off, and give hands and ears a rest.",
    ];

    /// <summary>That the day is done, and what may follow.</summary>
    public static IEnumerable<string> Done(Desk desk) =>
    [
        SessionInWords.Done,
        .. desk.NextDrill is { } next ? [$"If you wish: {SessionInWords.NextShapes(next)} (clampwise drill {next.Id} --plain)."] : Array.Empty<string>(),
    ];

    /// <summary>A grade in lower case.</summary>
    public static string Word(Grade grade) => grade.ToString().ToLowerInvariant();

    private static string Headline(Verdict verdict, Question question)
    {
        if (verdict.DidNotKnow)
        {
            return $"It is {verdict.Expected}.";
        }

        if (verdict.OwnGrade is not null)
        {
            return verdict.IsCorrect ? $"{verdict.Expected}, by your own judgement." : $"Not this time: it is {verdict.Expected}.";
        }

        string said = $"you {(question.Direction == Direction.NamePlaceShape ? "placed" : "said")} {verdict.Given}";
        string right = verdict.IsPartly ? "Right in part" : "Right";
        return !verdict.IsCorrect ? $"Not this time: it is {verdict.Expected}, {said}."
            : verdict.Given == verdict.Expected ? $"{right}: {verdict.Expected}."
            : $"{right}: it is {verdict.Expected}, {said}.";
    }

    // A quiz is as long as asked, or as there is something to name.
    private static string Few(SessionState state) =>
        state.Kind == SessionKind.Quiz && state.Outcomes.IsEmpty ? $": {Counted.Of(state.Queue.Length, "question")}" : "";

    private static Voicing? Other(Verdict verdict, Question question) =>
        question.Form != AnswerForm.CountChanges && verdict.Answered is { } other && other.Fretting != verdict.RightVoicing.Fretting && other.Setup.Equals(verdict.RightVoicing.Setup) ? other : null;

    private static string Label(Question question, bool isFirst) => question.Form switch
    {
        AnswerForm.Compare => isFirst ? "The second one" : "in the second one",
        AnswerForm.Name or AnswerForm.Choose when isFirst && !IsPicked(question) => "Yours, as the nearest shape of that name",
        _ => isFirst ? "Yours" : "yours",
    };

    private static string HowToAnswer(Question question) => question.Form switch
    {
        AnswerForm.Place => " Answer with its frets, lowest string first.",
        AnswerForm.Play => " Enter shows it; then say how it went.",
        AnswerForm.Compare => " Answer same, or different and the strings.",
        AnswerForm.CountChanges => " Answer with their number.",
        _ when question.Choices.IsEmpty => " Answer with a name.",
        _ when IsPicked(question) => " Answer with a number.",
        _ => " Answer with a number or a name.",
    };

    // The shapes to pick from are said once, as the choices.
    private static bool IsPicked(Question question) => question.Direction.PicksShape();

    private static string ChoiceWords(Question question, Choice choice) => IsPicked(question)
        ? $"{choice.Voicing.Fretting.ToHomeText(question.Setup)}, from the nut {choice.Voicing.Fretting}: {ShapeWords.InShort(choice.Voicing)}"
        : choice.Text;

    private static string OutcomeWords(Outcome outcome) =>
        $"{outcome.Planned.Item.Subject.Voicing.ShapeName}, sounds {outcome.Planned.Item.Subject.Voicing.SoundingName}, {outcome.Planned.Item.Key.Direction.Title()}";

    private static string Part(SessionPart part) => SessionInWords.Part(part) is { Length: > 0 } words ? $", {words}" : "";

    private static string Days(double days) => days < 1.5 ? "a day" : $"{days:0} days";
}
