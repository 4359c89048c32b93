using Clampwise.Fretboard;

namespace Clampwise.Charts;

/// <summary>How large a lying fretboard is drawn, worked out from the room there is.</summary>
/// <param name="Window">The frets.</param>
/// <param name="Cell">Columns a fret, its wire among them.</param>
/// <param name="Spacing">Rows from one string to the next.</param>
/// <param name="StateWidth">Columns before the nut, where strings ring or are muted.</param>
internal sealed record LyingPlan(FretWindow Window, int Cell, int Spacing, int StateWidth)
{
    /// <summary>Columns for the number and the pitch of a string.</summary>
    public const int LabelWidth = 7;

    /// <summary>The narrowest fret with round brackets about its dot.</summary>
    public const int BracketCell = 9;

    private const int NarrowestCell = 3;
    private const int CalmCell = 5;
    private const int LegibleCell = 11;
    private const int WidestCell = 20;
    private const int MarkWidth = 2;

    // Wide enough for a pitch and a degree, so that a board stays as it is when words come beside it.
    private const int NoteWidth = 9;
    private const int WidthWithNotes = 70;
    private const int SpacingOfLargeDots = 3;
    private const int LargeDotFrame = 6;

    // Frets worth showing unasked where all of them are legible: the usual few, an octave, a short neck, all.
    private static readonly int[] s_views = [FretboardPicture.FewestFrets, 12, 19, Fret.Last];

    // A fret near the nut is about 3.5 times as long as strings are apart, and a row about twice as high as a column is wide. Where a
    // screen is high and narrow strings lie farther apart than that: it reads better from afar.
    private static readonly (int Spacing, int Cell, int Height)[] s_spacings = [(4, 14, 0), (3, 12, 0), (3, 7, 24), (2, 10, 0), (2, 7, 16)];

    /// <summary>True if dots are three rows high; there is a row more above and beneath then.</summary>
    public bool HasLargeDots => Spacing >= SpacingOfLargeDots;

    /// <summary>True if fret markers lie between the strings rather than beside the numbers.</summary>
    public bool HasInlays => Spacing > 1;

    /// <summary>Columns of a clamp's bar.</summary>
    public int BarWidth => Cell >= 14 ? 3 : Cell >= BracketCell ? 2 : 1;

    /// <summary>The column in a cell where fingers go.</summary>
    public int Middle => (Cell - 1) / 2;

    /// <summary>Columns from the state of a string to the last wire.</summary>
    public int BoardWidth => Neck + (Window.Count * Cell);

    /// <summary>Columns before the first fret: the state, the nut, and a sign where frets are left out.</summary>
    public int Neck => StateWidth + 1 + (Window.IsBroken ? 1 : 0);

    /// <summary>The best plan for a room.</summary>
    /// <param name="picture">What is drawn.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="countRows">Rows of fret numbers.</param>
    public static LyingPlan For(FretboardPicture picture, int width, int height, int countRows)
    {
        int state = 3 + (picture.Signs.IsOnRinging ? picture.Signs.Width : 0) + (picture.HasRoomForTwo ? 2 : 0);
        int room = width - LabelWidth - state - 1 - MarkWidth - NotesWidth(picture, width);
        int narrowest = Math.Max(NarrowestCell, picture.Signs.Width + 1);
        int count = Math.Min(picture.Frets ?? BestCount(picture, room, Math.Max(narrowest, CalmCell)), Math.Max(room / narrowest, 1));
        var window = FretWindow.Around(picture, count);
        // The sign where frets are left out takes a column too.
        window = window.IsBroken && (count * narrowest) + 1 > room ? FretWindow.Around(picture, Math.Max(count - 1, 1)) : window;
        int cell = Math.Clamp((room - (window.IsBroken ? 1 : 0)) / window.Count, narrowest, WidestCell);
        int strings = picture.Setup.StringCount;
        int spacing = s_spacings
            .Where(step => cell >= step.Cell && height >= step.Height && (step.Spacing < SpacingOfLargeDots || cell >= picture.Signs.Width + LargeDotFrame))
            .Select(step => step.Spacing)
            .FirstOrDefault(spacing => Rows(strings, spacing) + countRows <= height, 1);
        return new LyingPlan(window, cell, spacing, state);
    }

    /// <summary>Rows of the strings and what lies between them.</summary>
    public static int Rows(int strings, int spacing) => ((strings - 1) * spacing) + 1 + (spacing >= SpacingOfLargeDots ? 2 : 0);

    /// <summary>Columns for the words beside the strings.</summary>
    public static int NotesWidth(FretboardPicture picture, int width)
    {
        int needed = picture.Notes.Select(note => note.Length + 1).DefaultIfEmpty(0).Max();
        return width < WidthWithNotes ? needed : Math.Max(needed, NoteWidth);
    }

    // All frets that are needed if they can be seen calmly; else a window over those with something on them.
    private static int BestCount(FretboardPicture picture, int room, int calmCell)
    {
        int best = Math.Max(picture.LastFret, s_views.LastOrDefault(view => room / view >= LegibleCell, s_views[0]));
        int calm = room / calmCell;
        (int low, int high) = picture.Busy;
        return best <= calm ? best : picture.LastFret <= calm ? picture.LastFret : Math.Max(high - low + 1, calm);
    }
}
