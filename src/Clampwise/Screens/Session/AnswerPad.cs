using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;

namespace Clampwise.Screens.Session;

/// <summary>Where an answer is made: choices, a typed name, a hand on the fretboard, or a comparison.</summary>
internal abstract class AnswerPad
{
    /// <summary>The fretboard to draw with the question.</summary>
    public abstract FretboardPicture Picture { get; }

    /// <summary>True while letters are typed into an entry.</summary>
    public virtual bool IsTyping => false;

    /// <summary>True while Esc leads back within the pad.</summary>
    public virtual bool TakesEsc => false;

    /// <summary>True once the answer is shown: help comes too late, and only how it went is asked.</summary>
    public virtual bool IsRevealed => false;

    /// <summary>The keys of this pad, the most needed first.</summary>
    /// <param name="give">Told the answer when it is given.</param>
    public abstract IReadOnlyList<PageKey> Keys(Action<Answer> give);

    /// <summary>The lines beneath the fretboard.</summary>
    /// <param name="width">Columns to use.</param>
    /// <param name="ruledOut">Choices that a hint has ruled out, by index.</param>
    public abstract IEnumerable<Line> Draw(int width, IReadOnlySet<int> ruledOut);

    /// <summary>The pad for a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="glyphs">The characters of drawings.</param>
    /// <param name="hear">Plays the shape that is revealed.</param>
    public static AnswerPad For(Question question, GlyphSet glyphs, Action hear) => question.Form switch
    {
        AnswerForm.Play => new PlayPad(question, hear),
        AnswerForm.Place => new PlacePad(question),
        AnswerForm.Compare => new ComparePad(question),
        AnswerForm.CountChanges => new CountPad(question, glyphs),
        AnswerForm.Choose when question.Direction.PicksShape() => new ShapePad(question),
        _ => new NamePad(question),
    };
}
