namespace Clampwise.Practice.Tests;

/// <summary>
/// One who answers by a fixed rule that looks at nothing but the choices, the kind of question and what can be known before it is asked.
/// </summary>
/// <param name="Name">The rule in a few words.</param>
/// <param name="Worth">What the rule gives to a choice by its place; the highest is picked, and among equals by lot.</param>
internal sealed record Guesser(string Name, Func<AskedQuestion, int, double> Worth)
{
    /// <summary>Rules that need the log with its dates, not only the choices and what the player does badly.</summary>
    public static HashSet<string> OfDates { get; } = ["least: recall foreseen", "most: days since it was asked", "least: answers so far"];

    /// <summary>Rules for names to choose from.</summary>
    public static Guesser[] OfNames { get; } =
    [
        .. OfAnything,
        .. Both("tones in common", (asked, at) => asked.AgainstOthers(at, (one, other) => one.Tones.Intersect(other.Tones).Count())),
        .. Both("share of tones in common", (asked, at) => asked.AgainstOthers(at, (one, other) =>
            one.Tones.Intersect(other.Tones).Count() / (double)one.Tones.Union(other.Tones).Count())),
        .. Both("root, bass and quality in common", (asked, at) => asked.AgainstOthers(at, (one, other) =>
            (one.Symbol.Root.Class == other.Symbol.Root.Class ? 1 : 0) + (one.Symbol.BassClass == other.Symbol.BassClass ? 1 : 0)
            + (one.Symbol.Quality.Equals(other.Symbol.Quality) ? 1 : 0))),
        .. Both("root in common", (asked, at) => asked.AgainstOthers(at, (one, other) => one.Symbol.Root.Class == other.Symbol.Root.Class ? 1 : 0)),
        .. Both("letters in common", (asked, at) => asked.AgainstOthers(at, (one, other) => one.Text.Zip(other.Text).TakeWhile(pair => pair.First == pair.Second).Count())),
        .. Both("as high as the clamp above another", (asked, at) => asked.HasAt(at, -asked.HomeFret) ? 1 : 0),
        .. Both("as low as the clamp under another", (asked, at) => asked.HasAt(at, asked.HomeFret) ? 1 : 0),
        .. Both("its other name there", (asked, at) => asked.HasOtherNameOf(at) ? 1 : 0),
        .. Both("both neighbours there", (asked, at) => asked.HasAt(at, asked.HomeFret) && asked.HasAt(at, -asked.HomeFret) ? 1 : 0),
        new("held by a drill of the setup on that side", (asked, at) => asked.IsHeldInSetup(at) ? 1 : 0),
        new("held by a drill on that side", (asked, at) => asked.IsHeldOnSide(at) ? 1 : 0),
        new("held by a drill on either side", (asked, at) => asked.IsHeld(at) ? 1 : 0),
        .. Both("how many shapes of the setup bear it", (asked, at) => asked.Bearers(at)),
        .. Both("plainness", (asked, at) => -asked.Tones(at)),
        .. Both("the alphabet", (asked, at) => -asked.PlaceInAlphabet(at)),
    ];

    /// <summary>Rules for shapes to choose from.</summary>
    public static Guesser[] OfShapes { get; } =
    [
        .. OfAnything,
        .. Both("strings in common", (asked, at) => asked.AgainstOthers(at, (one, other) => -one.Voicing.SoundsOtherwise(other.Voicing).Count)),
        .. Both("fingers", (asked, at) => asked.Question.Choices[at].Voicing.Fretting.Stops.Count(stop => stop.IsFretted)),
        new("held by a drill of the setup", (asked, at) => asked.IsShapeHeld(at) ? 1 : 0),
    ];

    /// <summary>How likely the rule is to be right: 1 over the number of equals if the right one is among them.</summary>
    public double ChanceAt(AskedQuestion asked)
    {
        double[] worths = [.. Enumerable.Range(0, asked.Question.Choices.Length).Select(at => Worth(asked, at))];
        double most = worths.Max();
        return worths[asked.RightAt] == most ? 1.0 / worths.Count(worth => worth == most) : 0;
    }

    private static Guesser[] OfAnything =>
    [
        .. Enumerable.Range(0, 4).Select(place => new Guesser($"place {place + 1}", (_, at) => at == place ? 1 : 0)),
        .. Both("length", (asked, at) => asked.Question.Choices[at].Text.Length),
        .. Both("recall foreseen", (asked, at) => asked.Recall(at)),
        .. Both("answers so far", (asked, at) => asked.Of(at).Sum(memory => memory.Answers)),
        .. Both("misses so far", (asked, at) => asked.Of(at).Sum(memory => memory.Answers - memory.RightAnswers)),
        .. Both("share of misses so far", (asked, at) => asked.Of(at).Select(memory => 1 - (memory.RightAnswers / (double)memory.Answers)).DefaultIfEmpty(0).Max()),
        .. Both("how often it was taken for another", (asked, at) => asked.TakenFor(at)),
        .. Both("how often another was taken for it", (asked, at) => asked.Taken(at)),
        .. Both("days since it was asked", (asked, at) => asked.DaysSince(at)),
    ];

    private static Guesser[] Both(string name, Func<AskedQuestion, int, double> worth) =>
        [new($"most: {name}", worth), new($"least: {name}", (asked, at) => -worth(asked, at))];
}
