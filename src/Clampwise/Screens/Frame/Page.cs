using Clampwise.Fretboard;
using Clampwise.Look;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>
/// One screen of the program: lines for a size, and what keys do. It knows nothing of the terminal, so that a test can press keys
/// and read lines.
/// </summary>
internal abstract class Page
{
    /// <summary>What stands at the top left.</summary>
    public abstract string Title { get; }

    /// <summary>What stands at the top right.</summary>
    public virtual string Corner => "";

    /// <summary>
    /// All keys that work now: what is pressed, the key line and the help go by them. The most needed first, since a narrow terminal
    /// cuts the last ones; of two that take one press the first has it.
    /// </summary>
    public abstract IReadOnlyList<PageKey> Keys { get; }

    /// <summary>What help says about the screen, a paragraph each.</summary>
    public abstract IReadOnlyList<string> Help { get; }

    /// <summary>True while typed characters go into an entry of the page, so that letters are no commands.</summary>
    public virtual bool IsTyping => false;

    /// <summary>The voicing that F9 copies; null if there is none to copy now.</summary>
    public virtual Voicing? Copied => null;

    /// <summary>The lines between top and bottom.</summary>
    /// <param name="width">Columns to use.</param>
    /// <param name="height">Rows to use; what lies beyond is not seen.</param>
    public abstract IReadOnlyList<Line> Draw(int width, int height);

    /// <summary>A key was pressed. True if it meant something here.</summary>
    public bool Press(KeyPress press)
    {
        IReadOnlyList<PageKey> keys = Keys;
        BeforeKey();
        PageKey? key = keys.FirstOrDefault(key => key.Takes(press)) ?? keys.FirstOrDefault(key => key.TakesAny);
        key?.Act(press);
        return key is not null;
    }

    /// <summary>A key was pressed, whichever: what was said to the last one goes.</summary>
    protected virtual void BeforeKey()
    {
    }

    /// <summary>Time went by. True if the page looks different now.</summary>
    public virtual bool Tick() => false;

    /// <summary>The page has come to the front for the first time.</summary>
    public virtual void Enter()
    {
    }

    /// <summary>Another page lies in front of this one or the terminal's window has lost the focus, or no longer so.</summary>
    public virtual void Attend(bool isAttending)
    {
    }

    /// <summary>The page goes away for good.</summary>
    public virtual void Leave()
    {
    }
}
