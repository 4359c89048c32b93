using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class ClampMoveTests
{
    private static readonly Gen<(Voicing Voicing, ClampMove Move)> s_moves = Gen.Select(Gens.Voicings, Gen.Int[-3, 3])
        .Select((voicing, frets) => (voicing, ClampMove.Of(voicing.Setup, frets)))
        .Where(pair => pair.Item2.IsGood && pair.Item2.Value.Moved(pair.voicing).IsGood)
        .Select(pair => (pair.voicing, pair.Item2.Value));

    [Fact]
    public void With_every_string_held_shapes_keep_their_names_and_sound_higher_by_the_move() =>
        s_moves.Where(pair => pair.Move.IsExact).Holds(pair =>
        {
            Voicing moved = pair.Move.Moved(pair.Voicing).Value;
            Assert.Equal(pair.Voicing.Pitches.Select(pitch => pitch + pair.Move.Frets), moved.Pitches);
            Assert.True(pair.Voicing.Setup.Home is null || moved.ShapeName == pair.Voicing.ShapeName);
        });

    [Fact]
    public void Free_strings_that_ring_stay_and_every_other_string_moves() =>
        s_moves.Holds(pair =>
        {
            Voicing moved = pair.Move.Moved(pair.Voicing).Value;
            Assert.All(moved.Strings.Zip(pair.Voicing.Strings).Where(both => both.First.Pitch is not null), both => Assert.Equal(
                both.Second.Stop.IsRinging && !both.Second.IsHeld ? 0 : pair.Move.Frets,
                both.First.Pitch!.Value - both.Second.Pitch!.Value));
        });

    [Fact]
    public void A_full_capo_with_the_rig_above_it_transposes_exactly()
    {
        ClampMove move = ClampMove.Of(Setup.Parse("standard + full@1 + 1-5@3").Value, 2).Value;
        Assert.Equal("standard + full@3 + 1-5@5", move.To.ToString());
        Assert.Equal(["every string is held: shapes keep their names and sound two semitones up"], move.Lines);
        Assert.Equal(move.From.Rig, move.To.Rig);
    }

    [Fact]
    public void With_a_free_string_it_says_what_stays()
    {
        ClampMove move = ClampMove.Of(Setup.Parse("standard + 3-5@2").Value, 1).Value;
        Assert.Equal(
        [
            "strings 3-5 held, one semitone up; strings 1-2,6 free, unchanged",
            "a shape keeps its name only if no free string rings in it",
            "open strings E2 C3 F3 Bb3 B3 E4: no named tuning has these intervals",
        ], move.Lines);
    }

    [Fact]
    public void Refuses_to_leave_the_neck()
    {
        Setup setup = Setup.Parse("standard + 3-5@2").Value;
        Assert.Equal("clamp 3-5@2 cannot move by -2: it would sit at fret 0, and frets run from 1 to 24", setup.MovedBy(-2).Fault.Message);
        Assert.Equal(
            "string 6: the finger at fret 24 cannot move by 1, frets run from 1 to 24",
            ClampMove.Of(setup, 1).Value.Moved(Voicing.Parse(setup, "24 0 0 0 0 0").Value).Fault.Message);
    }
}
