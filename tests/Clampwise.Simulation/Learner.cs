using Clampwise.Fretboard;
using Clampwise.Practice;

namespace Clampwise.Simulation;

/// <summary>
/// Answers as a person does: recalls or not by the truth of their memory, slips, guesses among choices, takes a shape for one like
/// it, and needs time. The amounts are our judgement.
/// </summary>
public sealed class Learner(ITruth truth, Repertoire repertoire, int seed)
{
    private const double Slips = 0.02;
    private const double SaysNotKnown = 0.4;
    private const double TimeSpread = 0.35;
    private const double MinutesADay = 1440;
    private readonly Random _random = new(seed);
    private readonly Dictionary<ShapeKey, DrillVoicing[]> _like = [];
    private readonly HashSet<ShapeKey> _shown = [];

    /// <summary>The true chance of recall in the evening of a day.</summary>
    public double Recall(ItemKey item, double day) => truth.Recall(item, day);

    /// <summary>A shape is shown on its card: picture, names, sound. The first time leaves a trace in every direction.</summary>
    public void Show(PracticeItem item, double time)
    {
        if (!_shown.Add(item.Key.Shape))
        {
            return;
        }

        foreach (Direction direction in item.Drill.Directions)
        {
            truth.Practise(item.Key with { Direction = direction }, time, isRecalled: false);
        }
    }

    /// <summary>An answer with its thinking time in seconds, and whether it came from memory.</summary>
    public (Answer Answer, double Thinking, bool IsRecalled) Answer(Question question, double time)
    {
        double recall = truth.Recall(question.Item.Key, time);
        bool isRecalled = _random.NextDouble() < recall;
        double usual = 3.5 * Math.Exp((0.8 * (1 - recall)) + (TimeSpread * Chances.Normal(_random)));
        if (isRecalled)
        {
            return (_random.NextDouble() < Slips ? Wrong(question) : Right(question), usual, true);
        }

        return (_random.NextDouble() < SaysNotKnown ? new Answer.NotKnown() : Guess(question), usual * 1.8, false);
    }

    /// <summary>The answer was given and the verdict read.</summary>
    public void Learn(ItemKey item, double time, bool isRecalled) => truth.Practise(item, time, isRecalled);

    /// <summary>Minutes of a session as a part of a day.</summary>
    public static double DaysOf(TimeSpan minutes) => minutes.TotalMinutes / MinutesADay;

    private Answer Guess(Question question) => question.Form switch
    {
        AnswerForm.Choose => new Answer.Chosen(_random.Next(question.Choices.Length)),
        AnswerForm.Compare => new Answer.Compared(_random.Next(2) == 0, default),
        AnswerForm.Play => new Answer.Played(Grade.Missed),
        _ => Wrong(question),
    };

    private Answer Wrong(Question question)
    {
        switch (question.Form)
        {
            case AnswerForm.Choose:
                int[] wrong = [.. Enumerable.Range(0, question.Choices.Length).Where(index => !question.Choices[index].Voicing.Equals(question.Subject))];
                return new Answer.Chosen(wrong[_random.Next(wrong.Length)]);
            case AnswerForm.Compare:
                return new Answer.Compared(!question.Subject.Equals(question.Partner!.Voicing), default);
            case AnswerForm.Play:
                return new Answer.Played(Grade.Missed);
            case AnswerForm.Place:
                return Like(question.Item) is { } placed ? new Answer.Placed(placed.Fretting) : new Answer.NotKnown();
            default:
                return Like(question.Item) is { } named ? new Answer.Name(NameOf(question, named)) : new Answer.NotKnown();
        }
    }

    private Voicing? Like(PracticeItem item)
    {
        if (!_like.TryGetValue(item.Key.Shape, out DrillVoicing[]? like))
        {
            _like[item.Key.Shape] = like = [.. repertoire.Others(item).OrderByDescending(other => Likeness.OfSound(item.Subject.Voicing, other.Voicing)).Take(3)];
        }

        DrillVoicing[] shown = [.. like.Where(other => _shown.Contains(other.Key))];
        return shown.Length > 0 ? shown[Math.Min(_random.Next(shown.Length), _random.Next(shown.Length))].Voicing : null;
    }

    private static string NameOf(Question question, Voicing voicing) =>
        question.Direction is Direction.SeeShapeSayShapeName or Direction.SoundingNameSayShapeName ? voicing.ShapeName : voicing.SoundingName;

    private static Answer Right(Question question) => question.Form switch
    {
        AnswerForm.Name => new Answer.Name(NameOf(question, question.Subject)),
        AnswerForm.Place => new Answer.Placed(question.Subject.Fretting),
        AnswerForm.Play => new Answer.Played(Grade.Steady),
        AnswerForm.Choose => new Answer.Chosen(question.Choices.Select((choice, index) => (choice, index)).First(pair => pair.choice.Voicing.Equals(question.Subject)).index),
        _ => new Answer.Compared(question.Subject.Equals(question.Partner!.Voicing), question.Subject.SoundsOtherwise(question.Partner.Voicing)),
    };
}
