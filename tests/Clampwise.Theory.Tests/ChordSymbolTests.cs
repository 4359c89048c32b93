namespace Clampwise.Theory.Tests;

/// <summary>Ways to write chord symbols (Brandt and Roemer 1976, Standardized Chord Symbol Notation; common practice beyond it).</summary>
public class ChordSymbolTests
{
    [Theory]
    [InlineData("C", "C", "CM", "Cmaj", "CMaj", "C major", "Cma", "C/C", " C ")]
    [InlineData("Cm", "Cm", "C-", "Cmi", "Cmin", "C minor", "C−")]
    [InlineData("Cdim", "Cdim", "C°", "Co", "Cº", "Cm(b5)", "Cmb5", "C diminished")]
    [InlineData("Caug", "Caug", "C+", "C(#5)", "C+5", "C(♯5)")]
    [InlineData("Csus4", "Csus4", "Csus", "C(sus4)", "Cmsus4")]
    [InlineData("Csus2", "Csus2", "C(sus2)")]
    [InlineData("Csus4(add9)", "Csus24", "Csus2sus4", "Csus4add9", "Csus2(add4)", "Csus2/4")]
    [InlineData("C5", "C5", "Cno3", "C(no3)", "Comit3", "C no 3rd", "C(omit 3)")]
    [InlineData("C(b5)", "C(b5)", "C(♭5)", "C(-5)")]
    [InlineData("Cb5", "Cb5", "C♭5")]
    [InlineData("Cadd9", "C2", "Cadd9", "Cadd2", "C(add9)", "C(9)", "C/9")]
    [InlineData("Cm(add9)", "Cm(add9)", "Cmadd9", "Cm2", "Cm add 9")]
    [InlineData("Cadd4", "C4", "Cadd4", "Cadd11", "C(add11)")]
    [InlineData("C(add#11)", "C(add#11)", "C(#11)", "Cadd#4", "Cadd♯11")]
    [InlineData("Cadd4(add9)", "Cadd4(add9)", "Cadd9add11", "C2add4", "C(add4,add9)")]
    [InlineData("C6", "C6", "CM6", "Cmaj6", "Cadd6", "C(6)", "Cadd13")]
    [InlineData("C6/9", "C6/9", "C69", "C6(9)", "C6add9", "CM6/9", "C(6/9)", "C6,9")]
    [InlineData("C6/9/E", "C6/9/E", "C69/E")]
    [InlineData("Cm6/9", "Cm6/9", "C-69")]
    [InlineData("C7", "C7", "Cdom7", "C dominant 7")]
    [InlineData("Cmaj7", "Cmaj7", "CM7", "CMaj7", "CMAJ7", "Cma7", "CΔ", "CΔ7", "C△", "C^7", "C7M", "C(maj7)", "C major 7")]
    [InlineData("Cm7", "Cm7", "C-7", "Cmi7", "Cmin7", "C minor 7")]
    [InlineData("Cm(maj7)", "Cm(maj7)", "CmM7", "CmMaj7", "C-Δ7", "CmΔ", "Cminmaj7", "Cm7M", "Cmi(ma7)", "Cm/maj7", "Cmin/M7", "C minor major 7")]
    [InlineData("Cm7b5", "Cm7b5", "Cø", "Cø7", "CØ", "Cm7(b5)", "C-7b5", "Cm7-5", "Cmi7(♭5)", "C half-diminished 7", "Chalfdim7")]
    [InlineData("Cdim7", "Cdim7", "C°7", "Co7", "Cdiminished7")]
    [InlineData("Cdim(maj7)", "Cdim(maj7)", "Cm(maj7)b5", "C°M7", "Cm(maj7,b5)")]
    [InlineData("C7#5", "C7#5", "C+7", "Caug7", "C7+", "C7(#5)", "C7+5", "C7♯5")]
    [InlineData("Cmaj7#5", "Cmaj7#5", "C+maj7", "CΔ#5", "CaugM7", "C+M7")]
    [InlineData("C7sus4", "C7sus4", "C7sus", "Csus7", "C7(sus4)", "Cm7sus4")]
    [InlineData("C9sus4", "C9sus4", "C9sus", "C7sus4(9)", "C9(sus4)")]
    [InlineData("C7sus4(b9)", "C7sus4(b9)", "C7susb9", "C7b9sus4", "C7(b9)sus")]
    [InlineData("C9", "C9", "C7(9)", "C7add9", "C7/9")]
    [InlineData("Cmaj9", "Cmaj9", "CM9", "CΔ9", "Cmaj7(9)", "Cadd9(maj7)")]
    [InlineData("Cm9b5", "Cm9b5", "Cø9")]
    [InlineData("C9#5", "C9#5", "Caug9", "C+9")]
    [InlineData("C7b9", "C7b9", "C7(b9)", "C7-9", "C9b9", "C7♭9", "C7 b9")]
    [InlineData("C7#9", "C7#9", "C7(#9)", "C7+9", "C7b10")]
    [InlineData("C7(b9,#11)", "C7(b9,#11)", "C7b9#11", "C7(b9)(#11)", "C7(#11b9)", "C7#11b9", "C7(b9 #11)")]
    [InlineData("C7(#5,#9)", "C7(#5,#9)", "C7#5#9", "C+7#9")]
    [InlineData("C7alt", "C7alt", "Calt", "C7(alt)", "C7(b5,#5,b9,#9)")]
    [InlineData("C9#11", "C9#11", "C9(#11)", "C9+11", "C11#11")]
    [InlineData("C11", "C11", "C9(11)", "C9add11")]
    [InlineData("Cm11", "Cm11", "C-11", "Cm9(11)")]
    [InlineData("Cm7(add11)", "Cm7(add11)", "Cm7add11", "Cm7/11", "Cm7(11)", "Cm7add4")]
    [InlineData("C7(add13)", "C7(add13)", "C7/6", "C7(13)", "C7add6")]
    [InlineData("C13#11", "C13#11", "C13(#11)")]
    [InlineData("C7(no3)", "C7(no3)", "C7no3", "C7omit3", "C7 no 3rd", "Cm7no3")]
    [InlineData("C7(no5)", "C7(no5)", "C7no5", "C7(omit5)", "C7no5th")]
    [InlineData("F#m7b5/E", "F#m7b5/E", "F♯ø/E", "F#m7(b5) / E")]
    [InlineData("Bb/D", "Bb/D", "B♭/D", "BbM/D")]
    public void Reads_and_prints_in_house_style(string house, params string[] ways)
    {
        foreach (string way in ways)
        {
            Assert.Equal(house, ChordSymbol.Parse(way).Value.ToString());
        }

        Assert.Equal(house, ChordSymbol.Parse(house).Value.ToString());
    }

    [Theory]
    [InlineData("", "column 1: expected a chord symbol, such as C, F#m7 or D/F#, found the end of the text")]
    [InlineData("h7", "column 1: expected a note letter A to G in upper case, found 'h7'")]
    [InlineData("C/H", "column 3: expected a note letter A to G in upper case, found 'H'")]
    [InlineData("C/", "column 3: expected a note letter A to G in upper case, found the end of the text")]
    [InlineData("C/Ex", "column 4: expected the text to end here, found 'x'")]
    [InlineData("C7(b9", "column 3: expected a closing parenthesis for the one opened here")]
    [InlineData("Cadd3", "column 5: expected an added tone after add: 2, 4, 6, 9, 11 or 13, b6, b9 or b13, #9 or #11, found '3'")]
    [InlineData("C7no4", "column 5: expected a tone to leave out: 3, 5, 9 or 11, found '4'")]
    [InlineData("Cm7b4", "column 4: expected b5, b6, b9 or b13, found 'b4'")]
    [InlineData("C7#6", "column 3: expected #5, #9 or #11, found '#6'")]
    [InlineData("Cdimsus4", "column 5: expected no sus after dim: a diminished chord needs its third")]
    [InlineData("Cmalt", "column 3: expected alt after a root or a 7 alone, as in G7alt")]
    [InlineData("Cm7(maj7)", "column 5: expected no second seventh: the chord has one already")]
    [InlineData("C7x", "column 3: expected m, maj7, 7, sus4, add9, no3, (b5) or another part of a chord symbol, or a slash and a bass note, found 'x'")]
    [InlineData("Cm5", "column 3: expected m, maj7, 7, sus4, add9, no3, (b5) or another part of a chord symbol, or a slash and a bass note, found '5'")]
    [InlineData("C/m", "column 2: expected m, maj7, 7, sus4, add9, no3, (b5) or another part of a chord symbol, or a slash and a bass note, found '/m'")]
    [InlineData("C####", "column 5: expected at most three accidentals of one kind, such as F# or Bb")]
    public void Refuses(string text, string words) => Assert.Equal(words, ChordSymbol.Parse(text).Fault.ToString());

    [Theory]
    [InlineData("Cm", "R=C b3=Eb 5=G")]
    [InlineData("F#", "R=F# 3=A# 5=C#")]
    [InlineData("Bbm7b5", "R=Bb b3=Db b5=Fb b7=Ab")]
    [InlineData("Cdim7", "R=C b3=Eb b5=Gb bb7=Bbb")]
    [InlineData("E7#9", "R=E 3=G# 5=B b7=D #9=F##")]
    [InlineData("Dsus4", "R=D 4=G 5=A")]
    [InlineData("Aadd9", "R=A 3=C# 5=E 9=B")]
    [InlineData("G13", "R=G 3=B 5=D b7=F 9=A 11=C 13=E")]
    [InlineData("Abmaj7#5/C", "R=Ab 3=C #5=E 7=G")]
    [InlineData("D/E", "R=D 3=F# 5=A")]
    [InlineData("C7(no5)", "R=C 3=E b7=Bb")]
    public void Tones_are_spelled_from_the_root(string text, string tones) =>
        Assert.Equal(tones, string.Join(' ', ChordSymbol.Parse(text).Value.Tones.Select(tone => $"{tone.Degree}={tone.Note}")));

    [Theory]
    [InlineData("C#m7", "Dbm7", ChordLikeness.OtherSpelling)]
    [InlineData("F#/A#", "Gb/Bb", ChordLikeness.OtherSpelling)]
    [InlineData("CM7", "Cmaj7", ChordLikeness.Same)]
    [InlineData("C", "C/E", ChordLikeness.OtherChord)]
    [InlineData("C", "Cm", ChordLikeness.OtherChord)]
    [InlineData("C6", "Am7", ChordLikeness.OtherChord)]
    public void Likeness(string left, string right, ChordLikeness expected)
    {
        Assert.Equal(expected, ChordSymbol.Parse(left).Value.LikenessTo(ChordSymbol.Parse(right).Value));
        Assert.Equal(expected, ChordSymbol.Parse(right).Value.LikenessTo(ChordSymbol.Parse(left).Value));
    }
}
