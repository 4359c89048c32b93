namespace Clampwise.Fretboard.Tests;

public class FullCapoTests
{
    [Theory]
    [InlineData("standard + 2-4@2", 1, "standard + full@1 + 2-4@3")]
    [InlineData("standard + full@1 + 2-4@3", 2, "standard + full@3 + 2-4@5")]
    [InlineData("standard + full@1 + 2-4@3", -1, "standard + 2-4@2")]
    [InlineData("standard", 2, "standard + full@2")]
    [InlineData("standard + full@2", -2, "standard")]
    public void Moves(string from, int frets, string to) => Assert.Equal(to, FullCapo.Move(Setup.Parse(from).Value, frets).Value.ToString());

    [Theory]
    [InlineData("standard + 2-4@2", -1)]
    [InlineData("standard + 2-4@2", 23)]
    public void Refuses_to_leave_the_neck(string from, int frets) => Assert.False(FullCapo.Move(Setup.Parse(from).Value, frets).IsGood);

    [Fact]
    public void Shape_names_stay_and_sounding_names_move()
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        Voicing low = Voicing.Parse(setup, "006400").Value;
        for (int frets = 1; frets <= 10; frets++)
        {
            Voicing high = Voicing.Create(FullCapo.Move(setup, frets).Value, FullCapo.Along(low.Fretting, frets).Value).Value;
            Assert.Equal(low.ShapeName, high.ShapeName);
            Assert.Equal(low.Sounding.Readings[0].Symbol.TransposedBy(frets), high.Sounding.Readings[0].Symbol);
        }
    }
}
