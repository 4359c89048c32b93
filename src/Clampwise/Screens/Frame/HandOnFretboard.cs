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

    /// <summary>The hand after a key; null if the key means nothing here.</summary>
    public HandOnFretboard? Press(KeyPress key)
    {
        if (key == KeyPress.Up || key == KeyPress.Down)
        {
            int next = Number.Number + (key == KeyPress.Up ? -1 : 1);
            return this with { Number = StringNumber.Of(Math.Clamp(next, 1, Setup.StringCount)) };
        }

        if (key == KeyPress.Left || key == KeyPress.Right)
        {
            int next = Fret.Number + (key == KeyPress.Left ? -1 : 1);
            return this with { Fret = Fret.Of(Math.Clamp(next, 0, Fret.Last)) };
        }

        return key.Sign switch
        {
            ' ' => PutDownOrTakeOff(),
            'x' or 'X' => Stopped(StringStop.Muted),
            'o' or 'O' or '0' => Stopped(StringStop.Ringing),
            '.' => this with { Fretting = Fretting.AllRinging(Setup.StringCount) },
            _ => null,
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
