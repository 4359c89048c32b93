namespace Clampwise.Theory.Tests;

public class FaultTests
{
    [Fact]
    public void What_is_quoted_cannot_steer_a_terminal_and_stays_one_line()
    {
        string shown = new Fault("found '\u001b[31m\n\0'", 3).ToString();
        Assert.Equal("column 3: found '.[31m..'", shown);
    }

    [Fact]
    public void A_very_long_text_is_cut() => Assert.InRange(new Fault(new string('x', 1_000_000)).Message.Length, 100, 500);
}
