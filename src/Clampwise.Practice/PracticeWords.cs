using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The wording of every fault and remark that this layer reports.</summary>
internal static class PracticeWords
{
    public static Fault NoSuchDirection(string found, IEnumerable<string> codes) =>
        new($"there is no direction '{found}': expected one of {string.Join(", ", codes)}");

    public static Fault BadItemText(string found) =>
        new($"expected an item as 'rig | shape | direction', found '{found}'");

    public static Fault BadShapeText(string found) =>
        new($"expected a shape as 'rig | shape', found '{found}'");

    public static Fault BadClampWidth(string found) =>
        new($"expected how many strings each clamp holds, 1 to {StringNumber.Most}, such as 3 or 3, 5, found '{found}'");

    public static Fault BadId(string found) => new($"expected an id of 32 hexadecimal digits, found '{found}'");

    public static Fault BadDrillId(string found) =>
        new($"expected a drill id of lower-case letters, digits and single hyphens, such as open-a, found '{found}'");

    public static Fault WrongWeightCount(int found) => new($"expected {FsrsWeights.Count} weights, found {found}");

    public static Fault WeightOutOfRange(int index, double found, double lowest, double highest) =>
        new($"weight w{index} must lie from {lowest} to {highest}, found {found}");

    public static Fault DrillWithoutVoicings(DrillId id) => new($"drill {id} has no voicings: expected one or more");

    public static Fault VoicingOfOtherSetup(int place, Voicing voicing, Setup setup) =>
        new($"voicing {place} is played in {voicing.Setup}: expected one in {setup}");

    public static Fault SameVoicingTwice(int first, int second, Voicing voicing) =>
        new($"voicing {second} ({voicing.Fretting}) is the same as voicing {first}: expected each one once");

    public static Fault RetentionOutOfRange(double found) =>
        new($"the desired retention must lie from {FsrsSettings.LowestRetention} to {FsrsSettings.HighestRetention}, found {found}");

    public static Fault IntervalOutOfRange(int found) => new($"the longest interval must be 1 to {Fsrs.MostStability} days, found {found}");

    public static Fault WrongForm(AnswerForm form) => new($"this question wants {Wanted(form)}");

    public static Fault NoSuchChoice(int found, int count) => new($"there is no choice {found}: expected 1 to {count}");

    public static Fault NoName(string found, int column) =>
        new($"expected a chord name, which begins with a letter A to G in either case, such as D, f#m or Bb7; found '{found}'", column);

    public static Fault NegativeChanges(int found) => new($"expected a number of changes, 0 or more, found {found}");

    public static Fault NothingSounds { get; } = new("nothing sounds yet: let a string ring or place a finger");

    public static Fault NoHand(Fault why) => new($"the name fits, but {why.Message}");

    public const string Muted = "muted";

    public const string OwnJudgement = "own judgement";

    public static string StringDiffers(StringNumber number, string right, string answered) => $"string {number}: {right}, not {answered}";

    private static string Wanted(AnswerForm form) => form switch
    {
        AnswerForm.Name => "a chord name",
        AnswerForm.Place => "a shape on the fretboard",
        AnswerForm.Play => "how well it was played: missed, strained, steady or instant",
        AnswerForm.Choose => "one of the choices",
        AnswerForm.Compare => "'same' or 'different'",
        _ => "a number of clean changes",
    };
}
