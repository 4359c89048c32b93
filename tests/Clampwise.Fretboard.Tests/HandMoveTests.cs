namespace Clampwise.Fretboard.Tests;

/// <summary>Changes as lessons teach them: fingers that stay, a finger that slides, a shift of the whole hand (common practice, no source).</summary>
public class HandMoveTests
{
    [Theory]
    [InlineData("x32010", "x02210", "finger 1 and finger 2 stay, finger 3 moves over")]
    [InlineData("022000", "022100", "finger 1 and finger 2 move over, finger 3 comes down, position one fret down")]
    [InlineData("x02210", "022100", "finger 1, finger 2 and finger 3 move over")]
    [InlineData("133211", "355433", "finger 1, finger 2, finger 3 and finger 4 slide, position two frets up")]
    [InlineData("x32010", "x32010", "finger 1, finger 2 and finger 3 stay")]
    [InlineData("000000", "000000", "nothing moves")]
    public void In_words(string from, string to, string words) => Assert.Equal(words, Between(from, to).ToString());

    [Fact]
    public void What_stays_costs_nothing_and_a_guided_shift_less_than_an_unguided_one()
    {
        Assert.Equal(0.0, Between("x32010", "x32010").Points);
        Assert.Equal(Finger.Index, Between("133211", "355433").Guide);
        Assert.True(Between("x32010", "x02210").Points < Between("x32010", "xx0232").Points);
        Assert.True(Between("x2xxxx", "x7xxxx").Points < Between("x2xxxx", "xxxxx7").Points);
    }

    [Fact]
    public void A_hand_moves_within_one_setup_only() =>
        Assert.Throws<ArgumentException>(() => HandMove.Between(Hand("standard", "022000"), Hand("drop D", "022000")));

    private static HandMove Between(string from, string to) => HandMove.Between(Hand("standard", from), Hand("standard", to));

    private static Fingering Hand(string setup, string fretting) => Fingering.Of(Voicing.Parse(Setup.Parse(setup).Value, fretting).Value).Value;
}
