namespace Clampwise.Theory.Tests;

/// <summary>
/// The degrees of the twelve usual major and minor keys. The table is written from memory; each of its rows is proved here by what a handbook
/// says of scales: every degree has a letter of its own, and the steps of major are W-W-H-W-W-W-H, those of natural minor W-H-W-W-H-W-W
/// (Open Music Theory, Scales).
/// </summary>
public class MusicalKeyTests
{
    [Theory]
    [InlineData("C", "C D E F G A B")]
    [InlineData("G", "G A B C D E F#")]
    [InlineData("D", "D E F# G A B C#")]
    [InlineData("A", "A B C# D E F# G#")]
    [InlineData("E", "E F# G# A B C# D#")]
    [InlineData("B", "B C# D# E F# G# A#")]
    [InlineData("F#", "F# G# A# B C# D# E#")]
    [InlineData("Db", "Db Eb F Gb Ab Bb C")]
    [InlineData("Ab", "Ab Bb C Db Eb F G")]
    [InlineData("Eb", "Eb F G Ab Bb C D")]
    [InlineData("Bb", "Bb C D Eb F G A")]
    [InlineData("F", "F G A Bb C D E")]
    [InlineData("Am", "A B C D E F G")]
    [InlineData("Em", "E F# G A B C D")]
    [InlineData("Bm", "B C# D E F# G A")]
    [InlineData("F#m", "F# G# A B C# D E")]
    [InlineData("C#m", "C# D# E F# G# A B")]
    [InlineData("G#m", "G# A# B C# D# E F#")]
    [InlineData("Ebm", "Eb F Gb Ab Bb Cb Db")]
    [InlineData("Bbm", "Bb C Db Eb F Gb Ab")]
    [InlineData("Fm", "F G Ab Bb C Db Eb")]
    [InlineData("Cm", "C D Eb F G Ab Bb")]
    [InlineData("Gm", "G A Bb C D Eb F")]
    [InlineData("Dm", "D E F G A Bb C")]
    public void A_key_has_the_scale_of_the_handbook_and_spells_by_it(string text, string scale)
    {
        MusicalKey key = MusicalKey.Parse(text).Value;

        Assert.Equal(text, key.ToString());
        Assert.Equal(scale, string.Join(' ', key.Scale));
        Assert.All(key.Scale, degree => Assert.Equal(degree, key.Spell(degree.Class)));
        Assert.All(key.Scale, degree => Assert.Equal(degree, key.Write(degree.Class)));
        Assert.Equal(7, scale.Split(' ').Select(degree => degree[0]).Distinct().Count());
        PitchClass[] tones = [.. scale.Split(' ').Select(degree => NoteName.Parse(degree).Value.Class)];
        Assert.Equal(key.IsMinor ? "WHWWHWW" : "WWHWWWH", string.Concat(tones.Zip([.. tones[1..], tones[0]], (one, next) => PitchClass.SemitonesUp(one, next) == 2 ? 'W' : 'H')));
        Assert.Equal(tones.ToHashSet(), [.. Enumerable.Range(0, PitchClass.Count).Select(PitchClass.Of).Where(key.Contains)]);
    }

    [Fact]
    public void A_fifth_up_adds_one_sharp_and_moves_every_spelling_by_a_fifth()
    {
        var fifth = Interval.Of(5);
        for (int signature = -7; signature < 7; signature++)
        {
            foreach (bool isMinor in (bool[])[false, true])
            {
                MusicalKey key = MusicalKey.Of(NoteName.FromFifths(signature + (isMinor ? 3 : 0)), isMinor).Value;
                MusicalKey above = MusicalKey.Of(key.Tonic + fifth, isMinor).Value;

                Assert.Equal(signature + 1, above.Signature);
                Assert.All(
                    Enumerable.Range(0, PitchClass.Count).Select(PitchClass.Of),
                    tone => Assert.Equal(key.Spell(tone) + fifth, above.Spell(tone + 7)));
            }
        }
    }

    [Fact]
    public void A_key_goes_round_the_circle_and_never_takes_more_than_six_signs() => Assert.All(Enumerable.Range(0, 12), up =>
    {
        MusicalKey key = MusicalKey.Parse("D").Value.Up(up);
        Assert.InRange(key.Signature, -6, 6);
        Assert.Equal("D", key.Up(12 - up).ToString());
        Assert.True(MusicalKey.Parse("Em").Value.Up(up).IsMinor);
    });

    [Fact]
    public void A_key_moved_by_nothing_or_octaves_keeps_its_spelling() =>
        Assert.All((int[])[-12, 0, 24], up => Assert.Equal("Gb", MusicalKey.Parse("Gb").Value.Up(up).ToString()));

    [Theory]
    [InlineData("Db", "C Db D Eb E F Gb G Ab A Bb Cb")]
    [InlineData("C", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("F#", "C C# D D# E E# F# G G# A A# B")]
    [InlineData("G#m", "C C# D D# E F F# G G# A A# B")]
    public void Outside_its_scale_a_key_is_written_as_a_player_would(string key, string notes) => Assert.Equal(
        notes, string.Join(' ', Enumerable.Range(0, PitchClass.Count).Select(number => MusicalKey.Parse(key).Value.Write(PitchClass.Of(number)))));

    [Theory]
    [InlineData("G#", "G# has no signature of at most seven sharps or flats: give the key that sounds the same, such as Ab for G#")]
    [InlineData("C7", "expected nothing or m after the tonic of a key, as in F# or C#m, found '7'")]
    public void What_is_no_key_is_refused_with_what_would_be(string text, string words)
    {
        Assert.Equal(words, MusicalKey.Parse(text).Fault.Message);
    }
}
