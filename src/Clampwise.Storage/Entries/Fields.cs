using Clampwise.Fretboard;

namespace Clampwise.Storage;

/// <summary>
/// All fields of all kinds of log entry, each with its bounds: far beyond what practice brings, so that only nonsense is refused. They
/// hold for whatever is read, from the journal as from another file.
/// </summary>
internal static class Fields
{
    // Characters.
    private const double Word = 64;
    private const double Key = 1_000;
    private const double Words = 4_000;

    // Milliseconds: a clock that was set meanwhile may go far, also back.
    private const double LongestSpan = 400.0 * 24 * 60 * 60 * 1000;

    private const double FirstYear = 1900;
    private const double LastYear = 2999;

    public static readonly Field Version = new("v", "v", 1, int.MaxValue);
    public static readonly Field Kind = new("kind", "k", 0, Word);
    public static readonly Field Id = new("id", "_id", 0, Word);
    public static readonly Field At = new("at", "t", FirstYear, LastYear);

    public static readonly Field Shown = new("shownMs", "sh", -LongestSpan, LongestSpan);
    public static readonly Field Item = new("item", "i", 0, Key);
    public static readonly Field Drill = new("drill", "dr", 0, Key);
    public static readonly Field Session = new("session", "se", 0, Word);
    public static readonly Field Day = new("day", "d", FirstYear, LastYear);
    public static readonly Field Grade = new("grade", "g", 0, Word);
    public static readonly Field Right = new("right", "r", 0, 1);
    public static readonly Field Setup = new("setup", "su", 0, Words);
    public static readonly Field Answer = new("answer", "an", 0, Words);
    public static readonly Field Expected = new("expected", "ex", 0, Words);
    public static readonly Field Unknown = new("unknown", "un", 0, 1);
    public static readonly Field ConfusedWith = new("confusedWith", "cw", 0, Key);
    public static readonly Field Partner = new("partner", "pa", 0, Key);
    public static readonly Field Hints = new("hints", "h", 0, 1000);
    public static readonly Field Thinking = new("thinkingMs", "th", -LongestSpan, LongestSpan);
    public static readonly Field Primed = new("primed", "pr", 0, 1);
    public static readonly Field Choices = new("choices", "ch", 0, 1000);
    public static readonly Field Family = new("family", "f", 0, Word);
    public static readonly Field Foreseen = new("foreseen", "fo", 0, 1);

    public static readonly Field Attempt = new("attempt", "at", 0, Word);
    public static readonly Field Reason = new("reason", "re", 0, Word);
    public static readonly Field Way = new("way", "w", 0, Word);
    public static readonly Field Practised = new("practisedMs", "p", -LongestSpan, LongestSpan);
    public static readonly Field CutShort = new("cutShort", "cs", 0, 1);
    public static readonly Field Weights = new("weights", "ws", -1e6, 1e6);
    public static readonly Field Why = new("why", "y", 0, Words);
    public static readonly Field String = new("string", "sn", 1, StringNumber.Most);
    public static readonly Field Cents = new("cents", "ce", -12_000, 12_000);
    public static readonly Field StringRight = new("stringRight", "sr", 0, 1);

    /// <summary>All of them, in the order in which a spreadsheet shows them.</summary>
    public static IReadOnlyList<Field> All { get; } =
    [
        At, Kind, Day, Item, Setup, Expected, Answer, Right, Grade, Thinking, Hints, Choices, Unknown, Primed, ConfusedWith, Partner, Family,
        Foreseen, Drill, Session, Shown, Attempt, Reason, Way, Practised, CutShort, Weights, Why, String, Cents, StringRight, Id, Version,
    ];
}
