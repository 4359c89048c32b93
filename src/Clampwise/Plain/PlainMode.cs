using Clampwise.Application;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>Whether the program draws screens or speaks line by line.</summary>
internal static class PlainMode
{
    /// <summary>What is said when there is nothing to draw on and plain lines were not asked for.</summary>
    public const string Notice = "No terminal to draw on: line by line instead, as with --plain.";

    /// <summary>True if screens can be drawn.</summary>
    public static bool CanDraw(Surroundings around) => around.IsTerminal && around.Variable("TERM") != "dumb";

    /// <summary>True if it goes line by line: asked for, or because nothing can be drawn, which is said.</summary>
    public static bool IsChosen(Surroundings around, bool isAsked)
    {
        bool isForced = !isAsked && !CanDraw(around);
        if (isForced)
        {
            around.Out.WriteLine(Notice);
        }

        return isAsked || isForced;
    }

    /// <summary>Says what the first screen would say in passing: no sound, and drills of the player's own that can't be read.</summary>
    public static void SayNotices(Surroundings around, Desk desk)
    {
        foreach (Fault unread in desk.Shelf.Folder is { } folder ? DrillLibrary.Load(folder).Faults : [])
        {
            around.Error.WriteLine($"clampwise: {unread}");
        }

        if (desk.Sound.Notice is { } silent)
        {
            around.Out.WriteLine(silent);
        }
    }
}
