namespace Clampwise.Fretboard.Tests;

public class ExplanationTests
{
    [Fact]
    public void A_clamped_voicing_in_full() => Assert.Equal(
    [
        "005400 in standard + 3-5@2",
        "sounds Em; counted from the clamp at 2 it is Dm, ^ 0 0 3 2 0 0",
        "string 6 free, rings, E2, the root",
        "string 5 held by the clamp at fret 2, rings, B2, the fifth",
        "string 4 held by the clamp at fret 2, finger 2 at fret 5, G3, the minor third",
        "string 3 held by the clamp at fret 2, finger 1 at fret 4, B3, the fifth",
        "string 2 free, rings, B3, the fifth",
        "string 1 free, rings, E4, the root",
        "fingers: 1 at fret 4 on string 3, 2 at fret 5 on string 4",
        "reach 29 mm, difficulty 2.4: two fingers, spread of 39 % of the reach",
    ], Explanation.Of(Voicing.Parse(Setup.Parse("standard + 3-5@2").Value, "005400").Value).Lines);

    [Fact]
    public void What_no_hand_can_finger_says_why() => Assert.Equal(
        "no hand for it: five fingers needed",
        Explanation.Of(Voicing.Parse(Setup.Parse("standard").Value, "213021").Value).Lines.Last());

    [Fact]
    public void Every_voicing_can_be_explained() => Gens.Voicings.Holds(voicing => Assert.All(
        Explanation.Of(voicing).Lines, line => Assert.False(string.IsNullOrWhiteSpace(line))));
}
