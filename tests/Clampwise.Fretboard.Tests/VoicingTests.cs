using CsCheck;

namespace Clampwise.Fretboard.Tests;

public class VoicingTests
{
    [Theory]
    [InlineData("standard + 2-4@2", "E2 A2 E3 A3 C#4 E4")]
    [InlineData("standard + full@1 + 1-5@3", "F2 C3 F3 Bb3 D4 G4")]
    [InlineData("standard + 2-4@2 + 3@4", "E2 A2 E3 B3 C#4 E4")]
    public void The_highest_clamp_that_holds_a_string_is_its_ground(string setup, string pitches) =>
        Assert.Equal(pitches, string.Join(' ', Setup.Parse(setup).Value.GroundPitches));

    [Theory]
    [InlineData("2-4@2", "x00200", "column 4: string 3 is held by the clamp at 2: a finger at fret 2 changes nothing, use a fret above 2 or 0")]
    [InlineData("2-4@2", "^ x 0 0 -1 0 0", "column 9: string 3 is held by the clamp at 2: a finger at fret 1 changes nothing, use a fret above 2 or 0")]
    [InlineData("2-4@2", "100000", "column 1: string 6: a finger at fret 1 reaches behind clamp 2-4@2, very awkward and allowed only when asked for: use fret 2 or above")]
    [InlineData("4-5@2 + 2-3@4", "000002", "column 6: string 1: a finger at fret 2 reaches behind clamp 2-3@4, very awkward and allowed only when asked for: use fret 4 or above")]
    [InlineData("full@2 + 3-5@4", "3 0 0 0 0 0", "column 1: string 6: a finger at fret 3 reaches behind clamp 3-5@4, very awkward and allowed only when asked for: use fret 4 or above")]
    public void What_the_clamps_refuse(string setup, string fretting, string words) =>
        Assert.Equal(words, Voicing.Parse(Setup.Parse(setup).Value, fretting).Fault.ToString());

    [Fact]
    public void Behind_the_clamp_is_allowed_when_asked_for_but_never_on_a_string_it_holds()
    {
        Setup setup = Setup.Parse("2-4@2").Value;
        Assert.Equal("F2", Voicing.Parse(setup, "100000", allowBehindClamp: true).Value.Strings[0].Pitch.ToString());
        Assert.False(Voicing.Parse(setup, "000100", allowBehindClamp: true).IsGood);
    }

    [Fact]
    public void A_finger_beside_the_clamp_is_allowed_on_a_free_string() =>
        Assert.Equal("F#2", Voicing.Parse(Setup.Parse("2-4@2").Value, "200000").Value.Strings[0].Pitch.ToString());

    [Fact]
    public void A_fretting_for_another_number_of_strings_is_refused() =>
        Assert.Equal(
            "the fretting is for 4 strings, the setup has 6",
            Voicing.Create(Setup.Parse("standard").Value, Fretting.AllRinging(4)).Fault.Message);

    [Fact]
    public void A_string_sounds_at_its_tuning_plus_the_finger_or_else_the_ground() =>
        Gens.Voicings.Holds(voicing => Assert.All(voicing.Strings, s => Assert.Equal(
            s.Stop.IsMuted ? null : voicing.Setup.Tuning[s.Number] + Math.Max(s.Stop.Finger?.Number ?? 0, HighestClampOn(voicing, s.Number)),
            s.Pitch)));

    private static int HighestClampOn(Voicing voicing, StringNumber number) =>
        voicing.Setup.Clamps.Where(clamp => clamp.Strings.Contains(number)).Select(clamp => clamp.Fret.Number).Append(0).Max();

    [Fact]
    public void Every_voicing_has_both_names() => Gens.Voicings.Holds(voicing =>
        Assert.DoesNotContain("", new[] { voicing.SoundingName, voicing.ShapeName }));

    [Fact]
    public void The_shape_in_the_rig_keeps_its_name_and_sounds_lower_by_the_fret_of_the_full_capo() =>
        Gens.Voicings.Where(voicing => voicing.Setup.HomeFret >= voicing.Setup.RigFret).Holds(voicing =>
        {
            Voicing inRig = voicing.InRig();
            Assert.Equal(voicing.ShapeName, inRig.ShapeName);
            Assert.Equal(voicing.Pitches.Select(pitch => pitch - voicing.Setup.RigFret.Number), inRig.Pitches);
            Assert.Equal(inRig.Setup, inRig.Setup.Rig);
        });
}
