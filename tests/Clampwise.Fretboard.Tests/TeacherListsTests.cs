using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

/// <summary>
/// The teacher's lists are true by arithmetic: every hand is allowed, can be fingered, and sounds the chord that it is listed under.
/// Whether a hand is a good one is judgement of the trade, no source.
/// </summary>
public class TeacherListsTests
{
    private static readonly IReadOnlyList<TeacherLine> s_hands = TeacherFile.Read("teacher-hands.txt");
    private static readonly IReadOnlyList<TeacherLine> s_frozen = TeacherFile.Read("frozen-drill-voicings.txt");
    private static readonly IReadOnlyList<TeacherLine> s_fingerings = TeacherFile.Read("teacher-fingerings.txt");

    [Fact]
    public void Ten_setups_have_fifteen_names_each()
    {
        var setups = s_hands.GroupBy(line => line.Setup).ToList();
        Assert.Equal(10, setups.Count);
        Assert.All(setups, setup => Assert.Equal(15, setup.Select(line => line.Key).Distinct().Count()));
    }

    [Fact]
    public void Every_hand_sounds_the_chord_that_it_is_listed_under() => Assert.All(s_hands, line =>
    {
        Assert.InRange(line.Values.Length, 1, 4);
        Assert.Equal(line.Values.Length, line.Values.Distinct().Count());
        Assert.All(line.Values, hand => AssertSounds(line.Setup, hand, line.Key.TrimEnd('?')));
    });

    [Fact]
    public void A_cell_without_a_mark_has_two_hands_at_least() =>
        Assert.All(s_hands.Where(line => !line.Key.EndsWith('?')), line => Assert.True(line.Values.Length >= 2, $"{line}"));

    [Fact]
    public void Every_hand_can_be_fingered() => Assert.All(s_hands, line => Assert.All(line.Values, hand =>
    {
        Result<Fingering> fingering = Fingering.Of(Of(line.Setup, hand), Hand.Medium);
        Assert.True(fingering.IsGood, $"{hand} in {line.Setup}: {(fingering.IsGood ? "" : fingering.Fault.Message)}");
    }));

    [Fact]
    public void The_frozen_drills_are_sixty_six_voicings_that_sound_their_names()
    {
        Assert.Equal(66, s_frozen.Count);
        Assert.All(s_frozen, line => AssertSounds(line.Setup, line.Key, line.Values[0]));
    }

    [Fact]
    public void Sixty_hands_are_fingered_once_or_twice()
    {
        Assert.Equal(60, s_fingerings.Count);
        Assert.All(s_fingerings, line => Assert.InRange(line.Values.Length, 1, 2));
    }

    [Fact]
    public void A_finger_stands_on_every_fretted_string_and_on_no_other() => Assert.All(s_fingerings, line =>
    {
        Fretting fretting = Of(line.Setup, line.Key).Fretting;
        Assert.All(line.Values, fingers => Assert.Equal(
            fretting.Stops.Select(stop => stop.IsFretted),
            fingers.Select(finger => finger != '.')));
    });

    [Fact]
    public void A_finger_keeps_to_one_fret_and_a_later_one_stands_at_most_a_fret_behind() => Assert.All(s_fingerings, line =>
    {
        Fretting fretting = Of(line.Setup, line.Key).Fretting;
        Assert.All(line.Values, fingers =>
        {
            var placed = fingers.Zip(fretting.Stops).Where(pair => pair.First is >= '1' and <= '4')
                .GroupBy(pair => pair.First, pair => pair.Second.Finger!.Value).OrderBy(group => group.Key).ToList();
            Assert.All(placed, group => Assert.Single(group.Distinct()));
            Assert.True(placed.Zip(placed.Skip(1)).All(pair => pair.First.First().Number <= pair.Second.First().Number + 1), $"{line.Key} {fingers}");
        });
    });

    private static Voicing Of(string setup, string fretting) => Voicing.Parse(Setup.Parse(setup).Value, fretting).Value;

    // All tones of the chord and no other; the fifth may be away where four tones or more are named.
    private static void AssertSounds(string setup, string fretting, string name)
    {
        ChordSymbol symbol = ChordSymbol.Parse(name).Value;
        Sonority shape = Of(setup, fretting).Shape;
        var wanted = symbol.Tones.Select(tone => tone.Note.Class).ToHashSet();
        var sounding = shape.Pitches.Select(pitch => pitch.Class).ToHashSet();
        var missing = wanted.Except(sounding).ToList();
        if (wanted.Count > 3)
        {
            _ = missing.Remove(symbol.Root.Class + 7);
        }

        // An eleventh under clamps is written without its ninth, a ninth may lack nothing but the fifth.
        if (name.EndsWith("11", StringComparison.Ordinal))
        {
            _ = missing.Remove(symbol.Root.Class + 2);
        }

        Assert.True(missing.Count == 0 && sounding.IsSubsetOf(wanted), $"{fretting} in {setup} does not sound {name}");
        Assert.Equal(symbol.BassClass, shape.Bass!.Value.Class);
    }
}
