using System.Globalization;
using Clampwise.Application;
using Clampwise.Fretboard;
using Clampwise.Sound;
using Clampwise.Sound.Performing;
using Clampwise.Sound.TuneUp;
using Clampwise.Theory;

namespace Clampwise.Plain;

/// <summary>What can be heard in the plain explorer.</summary>
internal sealed class ExplorerSound(Desk desk)
{
    private const double Slower = 2;

    private PlayingStyle Style => desk.Settings.Style;

    /// <summary>Plays what a line asks for. Nothing is said over the sound; if there is none, the words say why.</summary>
    public Result<string> Hear(TypedLine line, ExplorerHand hand)
    {
        if (!Asked(line, hand).TryGet(out Performance? performance, out Fault? fault))
        {
            return fault;
        }

        desk.Sound.Play(performance);
        return desk.Sound.IsAudible ? "" : desk.Sound.Notice ?? "There is no sound.";
    }

    private Result<Performance> Asked(TypedLine line, ExplorerHand hand)
    {
        Voicing held = hand.Held;
        TypedWord[] words = [.. line.Words.Skip(1).Where(word => word.Plain is not "string")];
        if (held.Pitches.IsEmpty && words is not [{ Plain: "open" }, ..])
        {
            return new Fault("every string is muted: there is nothing to hear");
        }

        return words.Select(word => word.Plain).ToArray() switch
        {
            [] or ["it"] => Perform.Strum(held, StrumDirection.Down, Style),
            ["slower"] => Perform.Strum(held, StrumDirection.Down, Style.Slower(Slower)),
            ["strings"] => Perform.Arpeggio(held, ArpeggioPattern.Upward, Style),
            ["open"] => Perform.Strum(Voicing.OpenStrings(held.Setup), StrumDirection.Down, Style),
            ["open", _] => Number(words[1], held.Setup).Select(number => TuningTones.Reference(held.Setup, number, Style.ConcertPitch)),
            ["before"] => hand.Before is { } before ? Perform.InTurn(before, held, Style) : new Fault("there is none before this one yet"),
            [_] => Number(words[0], held.Setup).Then(number => OneString(held, number)),
            _ => Expected(words[^1]),
        };
    }

    private Result<Performance> OneString(Voicing held, StringNumber number) =>
        held.Fretting[number].IsMuted ? new Fault($"string {number} is muted") : Perform.SingleString(held, number, Style);

    private static Result<StringNumber> Number(TypedWord word, Setup setup) => !int.TryParse(word.Plain, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
        ? Expected(word)
        : number >= 1 && number <= setup.StringCount
            ? StringNumber.Of(number)
            : new Fault($"there is no string {number}: strings are numbered 1, the highest, to {setup.StringCount}", word.Column);

    private static Fault Expected(TypedWord word) => new($"expected a string's number, strings, slower, open or before, found '{word.Text}'", word.Column);
}
