namespace Clampwise.Terminal;

/// <summary>What is shown on the screen and hears its keys. Everything here is called on the thread of the screen.</summary>
public interface IScreenContent
{
    /// <summary>True if colours are to be sent as the sixteen.</summary>
    bool IsInSixteen { get; }

    /// <summary>The screen on which it is shown from now on.</summary>
    void Appear(IScreen screen);

    /// <summary>The rows from top to bottom, each as wide as the screen; what lies beyond is not seen.</summary>
    /// <param name="columns">Columns of the screen.</param>
    /// <param name="rows">Rows of the screen.</param>
    IReadOnlyList<IReadOnlyList<StyledText>> Compose(int columns, int rows);

    /// <summary>A key was pressed; all is drawn anew afterwards.</summary>
    void Press(KeyPress key);

    /// <summary>A quarter of a second went by. True if something looks different now.</summary>
    bool Tick();

    /// <summary>The terminal's window lost (false) or regained (true) the player's attention.</summary>
    void Attend(bool isAttending);

    /// <summary>The program is asked to end: lets everything go, and ends the screen.</summary>
    void CloseAll();
}
