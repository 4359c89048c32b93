using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>
/// The mistake that a partial clamp invites: to read a hand as if every string were held at the home clamp, though some ring lower.
/// </summary>
internal sealed class FullCapoTrap
{
    private readonly Voicing _right;
    private readonly Func<Voicing, Sonority> _asked;

    private FullCapoTrap(Voicing right, Voicing held, Func<Voicing, Sonority> asked) => (_right, Voicing, _asked) = (right, held, asked);

    /// <summary>The same hand with a full capo in place of the home clamp and of all beneath it.</summary>
    public Voicing Voicing { get; }

    /// <summary>The trap of a voicing; null where every string that sounds would sound the same.</summary>
    /// <param name="right">The voicing.</param>
    /// <param name="asked">The side that is asked: its shape or its sound.</param>
    public static FullCapoTrap? Of(Voicing right, Func<Voicing, Sonority> asked) =>
        right.Setup.Home is { } home && Held(right, home.Fret).TryGet(out Voicing? held, out _) && held.SoundsOtherwise(right).Count > 0
            ? new FullCapoTrap(right, held, asked)
            : null;

    /// <summary>The verdict on a wrong name that the hand would have under the full capo; null for any other name.</summary>
    public Verdict? VerdictOn(ChordSymbol symbol) => !_asked(Voicing).Accepts(symbol).IsAccepted ? null
        : new Verdict(false, symbol.ToString(), _asked(_right).Name, _right)
        {
            Answered = Voicing,
            Differing = _right.SoundsOtherwise(Voicing),
            Remark = FullCapoWords.WouldBe(symbol, _right, _asked(_right), _right.SoundsOtherwise(Voicing)),
        };

    // A finger at or behind the full capo would change nothing: its string rings.
    private static Result<Voicing> Held(Voicing right, Fret home)
    {
        Setup setup = right.Setup;
        var full = Clamp.Full(home, setup.StringCount);
        StringStop[] stops = [.. right.Fretting.Stops.Select(stop => stop.Finger is { } finger && finger <= home ? StringStop.Ringing : stop)];
        return Setup.Create(setup.Tuning, [full, .. setup.Clamps.Where(clamp => clamp.Fret > home)], full)
            .Then(held => Voicing.Create(held.In(setup.Key), Fretting.Of(stops)));
    }
}
