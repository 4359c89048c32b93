using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

public class DroneMovesTests
{
    // Two strings in sixths between open ones, up a scale of D under the clamp: every teacher of open tunings shows it (common practice, no source).
    [Fact]
    public void A_hand_under_drones_says_at_which_frets_it_is_a_chord_of_the_key()
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        var moves = DroneMoves.Of(Voicing.Parse(setup, "006400").Value);
        Assert.Equal("006400", moves[0].Fretting.ToString());
        Assert.Equal("D", moves[0].ShapeName);
        Assert.All(moves, moved => Assert.Equal(
            (true, true, true, true), (moved.Fretting[0].IsRinging, moved.Fretting[1].IsRinging, moved.Fretting[4].IsRinging, moved.Fretting[5].IsRinging)));
        var scale = MusicalKey.Parse("D").Value.Scale.Select(note => note.Class).Append(PitchClass.Of(0)).ToHashSet();
        Assert.All(moves, moved => Assert.All(moved.Shape.Pitches, pitch => Assert.Contains(pitch.Class, scale)));
        Assert.True(moves.Length >= 3);
    }

    [Fact]
    public void Without_a_finger_nothing_moves() =>
        Assert.Empty(DroneMoves.Of(Voicing.OpenStrings(Setup.Parse("standard + 3-5@2").Value)));
}
