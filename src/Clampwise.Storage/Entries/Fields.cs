namespace Clampwise.Storage;

/// <summary>All fields of all kinds of log entry.</summary>
internal static class Fields
{
    public static readonly Field Version = new("v", "v");
    public static readonly Field Kind = new("kind", "k");
    public static readonly Field Id = new("id", "_id");
    public static readonly Field At = new("at", "t");

    public static readonly Field Shown = new("shownMs", "sh");
    public static readonly Field Item = new("item", "i");
    public static readonly Field Drill = new("drill", "dr");
    public static readonly Field Session = new("session", "se");
    public static readonly Field Day = new("day", "d");
    public static readonly Field Grade = new("grade", "g");
    public static readonly Field Right = new("right", "r");
    public static readonly Field Setup = new("setup", "su");
    public static readonly Field Answer = new("answer", "an");
    public static readonly Field Expected = new("expected", "ex");
    public static readonly Field Unknown = new("unknown", "un");
    public static readonly Field ConfusedWith = new("confusedWith", "cw");
    public static readonly Field Partner = new("partner", "pa");
    public static readonly Field Hints = new("hints", "h");
    public static readonly Field Thinking = new("thinkingMs", "th");
    public static readonly Field Primed = new("primed", "pr");
    public static readonly Field Choices = new("choices", "ch");
    public static readonly Field Family = new("family", "f");
    public static readonly Field Foreseen = new("foreseen", "fo");

    public static readonly Field Attempt = new("attempt", "at");
    public static readonly Field Reason = new("reason", "re");
    public static readonly Field Way = new("way", "w");
    public static readonly Field Practised = new("practisedMs", "p");
    public static readonly Field CutShort = new("cutShort", "cs");
    public static readonly Field Weights = new("weights", "ws");
    public static readonly Field Why = new("why", "y");
    public static readonly Field String = new("string", "sn");
    public static readonly Field Cents = new("cents", "ce");
    public static readonly Field StringRight = new("stringRight", "sr");

    /// <summary>All of them, in the order in which a spreadsheet shows them.</summary>
    public static IReadOnlyList<Field> All { get; } =
    [
        At, Kind, Day, Item, Setup, Expected, Answer, Right, Grade, Thinking, Hints, Choices, Unknown, Primed, ConfusedWith, Partner, Family,
        Foreseen, Drill, Session, Shown, Attempt, Reason, Way, Practised, CutShort, Weights, Why, String, Cents, StringRight, Id, Version,
    ];
}
