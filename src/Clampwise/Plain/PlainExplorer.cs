using System.Globalization;
using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>
/// The explorer line by line on plain input and output: each line changes something or asks something, and the answer says in words
/// where the hand is. A line that can't be read changes nothing.
/// </summary>
internal sealed class PlainExplorer(Desk desk, Voicing start, TextReader input, TextWriter output)
{
    private readonly ExplorerSound _sound = new(desk);
    private ExplorerHand _hand = new(start);
    private bool _hasLost;
    private int _unread;

    /// <summary>Runs until the end is asked for or the input ends.</summary>
    /// <returns>False if a voicing could not be kept.</returns>
    public bool Run()
    {
        SayAll([ExplorerText.Begin, .. ExplorerText.Setup(_hand.Held.Setup), .. ExplorerText.Step(_hand, Player)]);
        while (input.ReadLine() is { } line && Take(new TypedLine(line)))
        {
        }

        desk.Sound.Stop();
        output.WriteLine(ExplorerText.End);
        return !_hasLost;
    }

    private Hand Player => desk.Settings.Hand;

    private Setup Setup => _hand.Held.Setup;

    private bool Take(TypedLine line)
    {
        if (line.First is "end" or "quit" or "exit" or "q")
        {
            return false;
        }

        Fault? fault = Answer(line);
        _unread = fault is null ? 0 : _unread + 1;
        if (fault is not null)
        {
            output.WriteLine(fault.ToString());
        }

        if (_unread == EndlessInput.Most)
        {
            output.WriteLine(EndlessInput.InExplorer);
        }

        return _unread < EndlessInput.Most;
    }

    // Says what the line asks for, or gives back what is wrong with it.
    private Fault? Answer(TypedLine line) => line.First switch
    {
        "" or "say" or "where" or "names" or "fingers" => Said([VoicingText.Names(_hand.Held), VoicingText.OnTheHand(_hand.Held, Player)]),
        "help" or "?" => Said(ExplorerText.Help),
        "strings" or "words" when line.Words.Count == 1 => Said(VoicingText.Strings(_hand.Held, Player)),
        "explain" => Said(Explanation.Of(_hand.Held, Player).Lines),
        "hear" or "play" => Heard(_sound.Hear(line, _hand)),
        "clear" => Put(Voicing.OpenStrings(Setup)),
        "undo" => _hand.Undo() is { } past ? Step(past) : Said([ExplorerText.NoStepBack]),
        "compare" => Compare(line),
        "mark" => Mark(),
        "capo" => Capo(line),
        "setup" or "clamps" => line.Words.Count == 1 ? Said(ExplorerText.Setup(Setup)) : ChosenSetup(line).TryGet(out Setup? setup, out Fault? fault) ? ChangeTo(setup) : fault,
        "key" => Key(line),
        "setups" => Said(Setups.Select((setup, index) => $"{index + 1}: {setup}, open strings {string.Join(' ', setup.GroundNames)}")),
        "turn" => Setup.Turned().TryGet(out Setup? turned, out Fault? fault) ? ChangeTo(turned) : fault,
        "tune" => Tune(),
        "find" => Find(line),
        "next" => Look((_hand.At ?? -1) + 1, line),
        "back" or "previous" => Look((_hand.At ?? 0) - 1, line),
        "take" or "found" when line.Words.Count > 1 => Look(NumberOf(line.Words[1]) - 1, line),
        "found" => Said(_hand.Found.IsEmpty ? [ExplorerText.NothingFound] : _hand.Found.Select(ExplorerText.Listed)),
        "keep" => Keep(),
        _ when HandLine.IsOne(line) => HandLine.Read(line, _hand.Held).TryGet(out Voicing? voicing, out Fault? fault) ? Put(voicing) : fault,
        _ => new Fault($"'{line.Words[0].Text}' is no word here: type help for the words, or say what a string should do, such as 3 fret 4", line.Words[0].Column),
    };

    private Setup[] Setups => [.. desk.Shelf.Drills.Select(drill => drill.Setup).Distinct()];

    private Fault? Compare(TypedLine line)
    {
        if (line.Words.Count == 1)
        {
            return Said(_hand.Before is { } before ? ExplorerText.Compare(_hand.Held, before, "before") : ["There is none before this one yet."]);
        }

        if (line.Words[1].Plain is "mark" or "marked")
        {
            return Said(_hand.Marked is { } marked ? ExplorerText.Compare(_hand.Held, marked, "the marked one") : ["Nothing is marked yet: mark marks what you hold."]);
        }

        string text = line.From(1);
        return Voicing.Parse(Setup, text, allowBehindClamp: true).TryGet(out Voicing? other, out Fault? fault)
            ? Said(ExplorerText.Compare(_hand.Held, other, "that one"))
            : fault.ShiftedBy(line.Words[1].Column - 1);
    }

    private Fault? Mark()
    {
        _hand = _hand with { Marked = _hand.Held };
        return Said([VoicingText.NamesOf("Marked", _hand.Held)]);
    }

    private Fault? Capo(TypedLine line)
    {
        if (!CapoLine.Read(line, Setup).TryGet(out int frets, out Fault? fault))
        {
            return fault;
        }

        Result<Voicing> moved = FullCapo.Move(Setup, _hand.Held.Fretting, frets)
            .Then(moved => Voicing.Create(moved.Setup, moved.Fretting, allowBehindClamp: true));
        return moved.TryGet(out Voicing? voicing, out fault) ? ChangeTo(voicing) : fault;
    }

    private Fault? Key(TypedLine line)
    {
        if (line.Words.Count == 1)
        {
            return Said([ExplorerText.Key(Setup)]);
        }

        if (line.Words[1].Plain is "off")
        {
            return Spell(null);
        }

        return MusicalKey.Parse(TypedChord.Capitalised(line.From(1))).TryGet(out MusicalKey key, out Fault? fault)
            ? Spell(key)
            : fault.ShiftedBy(line.Words[1].Column - 1);
    }

    // The hand stays: no step, and nothing to take back.
    private Fault? Spell(MusicalKey? key)
    {
        _hand = _hand.In(key);
        return Said([ExplorerText.Key(Setup), VoicingText.Names(_hand.Held)]);
    }

    private Result<Setup> ChosenSetup(TypedLine line)
    {
        if (line.Words.Count == 2 && int.TryParse(line.Words[1].Text, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            Setup[] known = Setups;
            return number >= 1 && number <= known.Length ? known[number - 1] : new Fault($"there is no setup {number}: setups lists 1 to {known.Length}", line.Words[1].Column);
        }

        return Setup.Parse(line.From(1)).TryGet(out Setup? setup, out Fault? fault) ? setup : fault.ShiftedBy(line.Words[1].Column - 1);
    }

    private Fault? ChangeTo(Setup setup) => ChangeTo(Voicing.OpenStrings(setup));

    private Fault? ChangeTo(Voicing voicing)
    {
        SayAll(ExplorerText.Setup(voicing.Setup));
        return Step(_hand.Take(voicing));
    }

    private Fault? Find(TypedLine line)
    {
        if (!FindLine.Read(line, _hand.Held).TryGet(out FindLine? asked, out Fault? fault))
        {
            return fault;
        }

        FrettingSpace usual = FrettingSpace.UsualFor(Setup.StringCount);
        Result<FoundHands> result = FrettingSpace.Create(asked.MaxFret ?? usual.MaxFret.Number, asked.Query.Span ?? usual.Span)
            .Then(space => new Finder(Setup, Player, null, space).FindHands(asked.Query));
        if (!result.TryGet(out FoundHands? found, out fault))
        {
            return fault;
        }

        if (found.Total == 0 || found.Hands.IsEmpty)
        {
            return Said([$"No voicing in {Setup} that a hand can finger fits; you hold what you held."]);
        }

        output.WriteLine($"{Counted.Of(found.Total, "voicing")} in {Setup}{(found.Hands.Length < found.Total ? $", the best {found.Hands.Length} at hand" : "")}.");
        return Step((_hand with { Found = found.Hands, At = null }).Take(0));
    }

    private Fault? Look(int at, TypedLine line)
    {
        if (_hand.Found.IsEmpty)
        {
            return Said([ExplorerText.NothingFound]);
        }

        int count = _hand.Found.Length;
        return at >= 0 && at < count ? Step(_hand.Take(at))
            : line.Words.Count > 1 ? new Fault($"expected a number from 1 to {count}, found '{line.Words[1].Text}'", line.Words[1].Column)
            : Said([at < 0 ? "That is the first of them." : "That is the last of them."]);
    }

    private Fault? Tune() => Said(TuningLines.Of(TuningPlan.Of(Setup, desk.Settings.Style.ConcertPitch)));

    private Fault? Keep()
    {
        output.WriteLine(desk.Shelf.Keep(_hand.Held));
        Drill wanted = OwnDrill.With(desk.Shelf.Drills, _hand.Held);
        _hasLost |= !desk.Shelf.Drills.Any(drill => drill.Id == wanted.Id && drill.Voicings.Length == wanted.Voicings.Length);
        return null;
    }

    private Fault? Put(Voicing voicing) => voicing.Equals(_hand.Held)
        ? Said([VoicingText.NamesOf("Nothing has changed", voicing)])
        : Step(_hand.Take(voicing));

    private Fault? Step(ExplorerHand next)
    {
        _hand = next;
        return Said(ExplorerText.Step(next, Player));
    }

    private Fault? Heard(Result<string> heard)
    {
        bool isGood = heard.TryGet(out string? words, out Fault? fault);
        return isGood && words!.Length > 0 ? Said([words]) : fault;
    }

    private Fault? Said(IEnumerable<string> lines)
    {
        SayAll(lines);
        return null;
    }

    private void SayAll(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            output.WriteLine(line);
        }
    }

    private static int NumberOf(TypedWord word) => int.TryParse(word.Plain, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;
}
