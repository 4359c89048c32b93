using Clampwise.Charts;
using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Screens.Session;

/// <summary>A shape played on the guitar: one key shows and plays it, another says how it went. Every key is in reach of one hand.</summary>
internal sealed class PlayPad(Question question, Action hear) : AnswerPad
{
    private static readonly Grade[] s_grades = Enum.GetValues<Grade>();
    private bool _isRevealed;

    public override bool IsRevealed => _isRevealed;

    public override FretboardPicture Picture => _isRevealed
        ? new(question.Setup, question.Subject.Fretting) { Notes = VoicingNotes.Of(question.Subject) }
        : new(question.Setup, Fretting.AllRinging(question.Setup.StringCount));

    public override IReadOnlyList<PageKey> Keys(Action<Answer> give) => _isRevealed
        ? [PageKey.Digits(1, s_grades.Length, "how it went", number => give(new Answer.Played(s_grades[number - 1])))]
        : [PageKey.On(KeyPress.Enter, "look", Reveal).Or(KeyPress.Space)];

    public override IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut) => _isRevealed
        ? [
            .. Line.Wrap($"{question.Subject.ShapeName}: {question.Subject.Fretting.ToHomeText(question.Setup)}, sounds {question.Subject.SoundingName}", width),
            Line.Of([.. s_grades.SelectMany((grade, index) => new[] { new Run($"{(index == 0 ? "" : "   ")}{index + 1} ", Tone.Key), new Run($"{grade}".ToLowerInvariant(), Tone.Plain) })]),
          ]
        : Line.Wrap("Play it on the guitar and listen; then look.", width, Tone.Quiet);

    private void Reveal()
    {
        _isRevealed = true;
        hear();
    }
}
