using System.CommandLine;
using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Commands;

/// <summary>What <c>find</c> may be asked.</summary>
internal sealed class FindOptions
{
    // Index to little finger.
    private const int MostFingers = 4;

    private readonly Option<string?> _shape = new("--shape") { Description = "A name counted from the home clamp, such as Dsus4.", HelpName = "name" };
    private readonly Option<string?> _sounding = new("--sounding") { Description = "A name at concert pitch, such as Esus4.", HelpName = "name" };
    private readonly Option<string?> _key = new("--key") { Description = "A key counted from the home clamp, such as D or Em. Alone: what is worth having for it, hands for each degree; beside a name or --limit it spells and ranks.", HelpName = "key" };
    private readonly Option<string?> _degrees = new("--degrees") { Description = "Its tones, all of them and no others, such as 'R 3 5 9'.", HelpName = "degrees" };
    private readonly Option<string?> _top = new("--top") { Description = "The highest note, such as E or E4.", HelpName = "note" };
    private readonly Option<string?> _bass = new("--bass") { Description = "The lowest note, such as A or A2.", HelpName = "note" };
    private readonly Option<int> _ringing = new("--ringing") { Description = "At least so many strings ring with no finger.", HelpName = "number" };
    private readonly Option<string?> _keep = new("--keep") { Description = "Strings that must ring with no finger, such as 1-2.", HelpName = "strings" };
    private readonly Option<string?> _near = new("--near") { Description = "A fretting that the voices should move little from.", HelpName = "fretting" };
    private readonly Option<double?> _hardest = new("--hardest") { Description = "The greatest difficulty in points; an easy shape has two or three.", HelpName = "points" };
    private readonly Option<int> _minStrings = new("--min-strings") { Description = "At least so many strings sound.", HelpName = "number", DefaultValueFactory = _ => 1 };
    private readonly Option<bool> _unbroken = new("--unbroken") { Description = "No muted string between sounding ones." };
    private readonly Option<bool> _behind = SharedOptions.Behind();
    private readonly Option<int?> _maxFret = new("--max-fret") { Description = "The highest fret for a finger; 14 unless given.", HelpName = "fret" };
    private readonly Option<int?> _span = new("--span") { Description = "Highest fret less lowest is smaller than this; 4 unless given.", HelpName = "frets" };
    private readonly Option<int> _limit = new("--limit") { Description = "How many to show.", HelpName = "number", DefaultValueFactory = _ => 20 };
    private readonly Option<bool> _moveable = new("--moveable") { Description = "Only hands without a ringing string: they move along the neck as they are." };
    private readonly Option<bool> _drone = new("--drone") { Description = "Only hands that move under ringing strings, with the frets where each makes sense." };
    private readonly Option<bool> _thumb = new("--thumb") { Description = "The thumb may stop the lowest string." };
    private readonly Option<int?> _position = new("--position") { Description = "The hand stands at this fret: every finger lies there or up to three frets above.", HelpName = "fret" };
    private readonly Option<bool> _all = new("--all") { Description = "Every voicing by itself: hands with a string muted and variants are not folded into one line." };
    private readonly Option<bool> _count = new("--count") { Description = "Print how many frettings there are, by counting fingers alone, and nothing else." };
    private readonly Option<int> _fingers = new("--fingers") { Description = "With --count: at most so many fingers.", HelpName = "number", DefaultValueFactory = _ => 4 };
    private readonly Option<string> _barres = new("--barres") { Description = "With --count: one (a barre at the lowest fret only) or any.", HelpName = "rule", DefaultValueFactory = _ => "one" };

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Verb command, Option hand)
    {
        foreach (Option option in new Option[] { _shape, _sounding, _key, _degrees, _top, _bass, _ringing, _keep, _near, _hardest, _minStrings, _unbroken, _behind, _maxFret, _span, _limit, _moveable, _drone, _thumb, _position, _all, _count, _fingers, _barres })
        {
            command.Add(option);
        }

        command.Excludes(_count, _shape, _sounding, _degrees, _top, _bass, _ringing, _keep, _near, _hardest, _behind, _limit, _moveable, _drone, _thumb, _position, _all, _key, hand);
        command.Excludes(_shape, _sounding);
        command.Excludes(_moveable, _ringing, _keep, _drone);
        command.Needs(_fingers, _count);
        command.Within(_fingers, 0, MostFingers);
        command.Needs(_barres, _count);
    }

    public bool IsCount(ParseResult parsed) => parsed.GetValue(_count);

    /// <summary>True for hands under ringing strings.</summary>
    public bool IsDrone(ParseResult parsed) => parsed.GetValue(_drone);

    /// <summary>True for the page of a key: nothing asks for a list.</summary>
    public bool IsKey(ParseResult parsed) => parsed.GetValue(_key) is not null
        && !new Option[] { _shape, _sounding, _degrees, _near, _limit, _all }.Any(option => Verb.IsGiven(parsed.CommandResult, option));

    /// <summary>True to show every voicing by itself.</summary>
    public bool IsAll(ParseResult parsed) => parsed.GetValue(_all);

    /// <summary>True if the thumb may stop the lowest string.</summary>
    public bool UsesThumb(ParseResult parsed) => parsed.GetValue(_thumb);

    /// <summary>The space that is looked at.</summary>
    public Result<FrettingSpace> Space(ParseResult parsed, Setup setup)
    {
        FrettingSpace usual = FrettingSpace.UsualFor(setup.StringCount);
        return FrettingSpace.Create(parsed.GetValue(_maxFret) ?? usual.MaxFret.Number, parsed.GetValue(_span) ?? usual.Span);
    }

    /// <summary>The rules of a count.</summary>
    public Result<FrettingCounter> Counter(ParseResult parsed, Setup setup) => parsed.GetValue(_minStrings) is var fewest && (fewest < 1 || fewest > setup.StringCount)
        ? new Fault($"{_minStrings.Name}: expected 1 to {setup.StringCount}, found {fewest}")
        : BarresOf(parsed.GetValue(_barres)!).Then(barres =>
            FrettingSpace.Create(parsed.GetValue(_maxFret) ?? FrettingSpace.Usual.MaxFret.Number, parsed.GetValue(_span) ?? FrettingSpace.Usual.Span).Select(space => new FrettingCounter
            {
                Space = space,
                Fingers = parsed.GetValue(_fingers),
                Barres = barres,
                MinStrings = parsed.GetValue(_minStrings),
                Unbroken = parsed.GetValue(_unbroken),
            }));

    /// <summary>The query.</summary>
    public Result<VoicingQuery> Query(ParseResult parsed, Setup setup)
    {
        Result<VoicingQuery> query = new VoicingQuery
        {
            MinRinging = parsed.GetValue(_ringing),
            MinStrings = parsed.GetValue(_minStrings),
            Unbroken = parsed.GetValue(_unbroken),
            AllowBehindClamp = parsed.GetValue(_behind),
            MaxDifficulty = parsed.GetValue(_hardest),
            Span = parsed.GetValue(_span),
            Limit = parsed.GetValue(_limit),
            IsMoveable = parsed.GetValue(_moveable),
            IsDrone = parsed.GetValue(_drone),
        };
        if (parsed.GetValue(_position) is { } position)
        {
            query = PositionOf(position).Select(fret => query.Value with { Position = fret });
        }

        query = With(query, parsed, _shape, TypedChord.Parse, (asked, symbol) => asked with { ShapeName = symbol });
        query = With(query, parsed, _sounding, TypedChord.Parse, (asked, symbol) => asked with { SoundingName = symbol });
        query = With(query, parsed, _key, text => MusicalKey.Parse(TypedChord.Capitalised(text)), (asked, key) => asked with { Key = key });
        query = With(query, parsed, _degrees, text => DegreesWanted.Parse(text), (asked, degrees) => asked with { Degrees = degrees });
        query = With(query, parsed, _top, NoteWanted.Parse, (asked, note) => asked with { Top = note });
        query = With(query, parsed, _bass, NoteWanted.Parse, (asked, note) => asked with { Bass = note });
        query = With(query, parsed, _keep, text => StringSet.Parse(text, setup.StringCount), (asked, strings) => asked with { KeepRinging = strings });
        return With(query, parsed, _near, text => Voicing.Parse(setup, text, allowBehindClamp: true), (asked, near) => asked with { Near = near });
    }

    private static Result<VoicingQuery> With<T>(
        Result<VoicingQuery> query, ParseResult parsed, Option<string?> option, Func<string, Result<T>> read, Func<VoicingQuery, T, VoicingQuery> add)
        where T : notnull
    {
        if (!query.IsGood || parsed.GetValue(option) is not { } text)
        {
            return query;
        }

        return read(text).TryGet(out T? value, out Fault? fault) ? add(query.Value, value) : new Fault($"{option.Name}: {fault}");
    }

    private static Result<Fret> PositionOf(int fret) => fret is >= 1 and <= Fret.Last
        ? Fret.Of(fret)
        : new Fault($"--position: expected a fret from 1 to {Fret.Last}, found {fret}");

    private static Result<BarreRule> BarresOf(string text) => text switch
    {
        "one" => BarreRule.One,
        "any" => BarreRule.Any,
        _ => new Fault($"--barres: expected one or any, found '{text}'"),
    };
}
