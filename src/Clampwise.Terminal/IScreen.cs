namespace Clampwise.Terminal;

/// <summary>What the content asks of the screen that it is on.</summary>
public interface IScreen
{
    /// <summary>Something looks different now.</summary>
    void Redraw();

    /// <summary>Everything is to be sent anew: the colours are other ones.</summary>
    void Renew();

    /// <summary>Does something on the thread of the screen, whichever thread asks for it, and draws anew.</summary>
    void Post(Action action);

    /// <summary>Puts a text on the clipboard, where the terminal allows it.</summary>
    void Copy(string text);

    /// <summary>The screen goes away.</summary>
    void End();
}
