using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The wording of what a session says.</summary>
internal static class SessionWords
{
    public const string SoundGone = "No sound: what is heard is left out for now.";
    public const string RestHand = "Nothing more that works the hand today. If pain, numbness or tingling stays, ask a doctor, physiotherapist or other qualified clinician.";

    public const string Rest = "25 minutes: five minutes of rest do hands and ears good. The clock can be stopped.";

    public static Fault NotNow { get; } = new("that has no place at this point of the session");

    public static Fault NoMoreHints { get; } = new("there are no more hints: an answer or 'don't know' goes on");

    public static Fault NothingToUndo { get; } = new("there is no answer to take back");

    public static Fault IsPaused { get; } = new("the clock is stopped: take the session up again first");

    public static string LikeShape(string met, IEnumerable<string> changes) => $"The same hand as {met}, but {string.Join(", ", changes)}.";

    public static string StopChange(StringNumber number, StringStop met, StringStop now, Setup setup) => (met.Finger, now.Finger) switch
    {
        ({ } from, { } to) => $"string {number} {Spoken.Count(Math.Abs(to - from), "fret")} {(to > from ? "higher" : "lower")}",
        (_, { } to) => $"string {number} at fret {setup.FromHome(to)} {(setup.Home is null ? "" : "from the clamp")}".TrimEnd(),
        _ => now.IsMuted ? $"string {number} muted" : $"string {number} left to ring",
    };

    public static string Closing(int asked, int right, int missed) => (asked, missed) switch
    {
        (0, _) => "Nothing asked this time; it all keeps.",
        (_, 0) => $"{asked} asked, all right.",
        _ => $"{asked} asked, {right} right; what was missed comes back soon.",
    };
}
