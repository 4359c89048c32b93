namespace Clampwise.Charts;

/// <summary>How large an upright fretboard is drawn, worked out from the room there is.</summary>
/// <param name="Window">The frets.</param>
/// <param name="Column">Columns from one string to the next.</param>
/// <param name="FretRows">Rows a fret, its wire among them.</param>
internal sealed record UprightPlan(FretWindow Window, int Column, int FretRows)
{
    /// <summary>Columns for the fret numbers.</summary>
    public const int LabelWidth = 8;

    // Fewer frets than these are no view to move a cursor in.
    private const int FewestFrets = 5;

    private static readonly (int FretRows, int Column)[] s_scales = [(4, 8), (3, 6), (2, 4)];

    /// <summary>True if dots are three rows high.</summary>
    public bool HasLargeDots => FretRows >= 4;

    /// <summary>The column of a string in its own place.</summary>
    public int Middle => (Column / 2) - 1;

    /// <summary>The row of a fret where fingers go: nearer to its wire.</summary>
    public int FingerRow => (FretRows - 1) / 2;

    /// <summary>The best plan for a room; null if there is too little of it, so that the board lies better.</summary>
    public static UprightPlan? For(FretboardPicture picture, int width, int height)
    {
        int wanted = picture.Frets ?? picture.LastFret;
        int rows = height - OtherRows(picture);
        (int low, int high) = picture.Busy;
        IEnumerable<UprightPlan> plans = s_scales
            .Select(scale => (scale.FretRows, Column: Math.Max(scale.Column, NarrowestColumn(picture)), Fits: rows / scale.FretRows))
            .Where(scale => LabelWidth + (picture.Setup.StringCount * scale.Column) <= width)
            .Where(scale => scale.Fits >= wanted || (scale.FretRows == s_scales[^1].FretRows && scale.Fits >= Math.Max(high - low + 1, FewestFrets)))
            .Select(scale => new UprightPlan(FretWindow.Around(picture, Math.Min(wanted, scale.Fits)), scale.Column, scale.FretRows));
        return plans.FirstOrDefault();
    }

    // Room for a dot with the cursor on it, and above the nut for the state of a string.
    private static int NarrowestColumn(FretboardPicture picture)
    {
        int state = (picture.Signs.IsOnRinging ? picture.Signs.Width : 0) + (picture.HasRoomForTwo ? 2 : 0) + 2;
        return (Math.Max(picture.Signs.Width + 2, state) + 1) / 2 * 2;
    }

    /// <summary>Rows above and beneath the frets.</summary>
    public static int OtherRows(FretboardPicture picture) => 3 + (HasMarkRow(picture) ? 1 : 0);

    /// <summary>True if strings are pointed at, or may be, and there are no words beside the board to do it at.</summary>
    public static bool HasMarkRow(FretboardPicture picture) => picture.Notes.IsEmpty && (picture.Marked.Count > 0 || picture.IsComparing);
}
