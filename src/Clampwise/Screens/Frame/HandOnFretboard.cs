using Clampwise.Fretboard;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>A hand that the cursor keys place on a fretboard: where the cursor is, and what every string does.</summary>
/// <param name="Setup">The setup.</param>
/// <param name="Fretting">What the hand does so far.</param>
/// <param name="Number">The string under the cursor.</param>
/// <param name="Fret">The fret under the cursor; 0 is the place before the nut.</param>
internal sealed record HandOnFretboard(Setup Setup, Fretting Fretting, StringNumber Number, Fret Fret)
{
    /// <summary>The keys, for help and key lines.</summary>
    public const string KeyWords = "arrows move, Space puts a finger down or takes it off, x mutes a string, o lets it ring, . clears the board";

    /// <summary>All strings ringing, the cursor just above the home clamp on the highest string.</summary>
    public static HandOnFretboard Start(Setup setup) =>
        new(setup, Fretting.AllRinging(setup.StringCount), StringNumber.Of(1), Fret.Of(setup.HomeFret.Number + 1));

    /// <summary>The keys that change it.</summary>
    /// <param name="use">Told the hand after a key.</param>
    public (PageKey Move, PageKey Finger, PageKey Mute, PageKey Ring, PageKey Clear) Keys(Action<HandOnFretboard> use) =>
    (
        new("arrows", "move", [KeyPress.Up, KeyPress.Down, KeyPress.Left, KeyPress.Right], press => use(Moved(press))),
        PageKey.On(KeyPress.Space, "finger", () => use(PutDownOrTakeOff())),
        PageKey.On('x', "mute", () => use(Stopped(StringStop.Muted))),
        PageKey.On('o', "ring", () => use(Stopped(StringStop.Ringing))).Or(KeyPress.Of('0')),
        PageKey.On(KeyPress.Of('.'), "clear", () => use(this with { Fretting = Fretting.AllRinging(Setup.StringCount) }))
    );

    private HandOnFretboard Moved(KeyPress arrow)
    {
        int strings = arrow == KeyPress.Up ? -1 : arrow == KeyPress.Down ? 1 : 0;
        int frets = arrow == KeyPress.Left ? -1 : arrow == KeyPress.Right ? 1 : 0;
        return this with
        {
            Number = StringNumber.Of(Math.Clamp(Number.Number + strings, 1, Setup.StringCount)),
            Fret = Fret.Of(Math.Clamp(Fret.Number + frets, 0, Fret.Last)),
        };
    }

    private HandOnFretboard PutDownOrTakeOff()
    {
        StringStop now = Fretting[Number];
        if (Fret == Fret.Nut)
        {
            return Stopped(now.IsMuted ? StringStop.Ringing : StringStop.Muted);
        }

        return Stopped(now.Finger == Fret ? StringStop.Ringing : StringStop.At(Fret));
    }

    private HandOnFretboard Stopped(StringStop stop) => this with { Fretting = Fretting.With(Number, stop) };
}
