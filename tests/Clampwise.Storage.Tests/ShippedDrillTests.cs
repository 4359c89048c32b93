using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage.Tests;

public class ShippedDrillTests
{
    private const int MostFrets = 4;
    private const int MostFingers = 4;

    public static TheoryData<string> Ids => new(DrillLibrary.Shipped.Drills.Select(drill => drill.Id.ToString()));

    [Fact]
    public void All_files_of_the_folder_are_built_in_and_read()
    {
        Assert.Empty(DrillLibrary.Shipped.Faults);
        Assert.True(DrillLibrary.Shipped.Sheets.Length >= 24);
        Assert.Equal(DrillLibrary.Shipped.Sheets.Length, DrillLibrary.Shipped.Sheets.Select(sheet => sheet.Order).Distinct().Count());
    }

    [Fact]
    public void The_kinds_of_setup_that_a_player_meets_are_all_there()
    {
        List<Setup> setups = [.. DrillLibrary.Shipped.Drills.Select(drill => drill.Setup).Distinct()];

        Assert.True(setups.Count >= 12);
        Assert.True(setups.Count(setup => Partial(setup) is [{ Strings.Count: 3 }]) >= 2, "three-string clamps in two places");
        Assert.Contains(setups, setup => Partial(setup) is [{ Strings.Count: 4 }]);
        Assert.Contains(setups, setup => Partial(setup) is [{ Strings.Count: 5 }]);
        Assert.Contains(setups, setup => setup.Clamps.Any(clamp => clamp.IsFull) && Partial(setup).Length > 0);
        Assert.Contains(setups, setup => !setup.Tuning.Equals(Tuning.Standard));
        Assert.Contains(setups, setup => Partial(setup).Length == 2);

        static Clamp[] Partial(Setup setup) => [.. setup.Clamps.Where(clamp => !clamp.IsFull)];
    }

    [Fact]
    public void The_first_run_is_six_easy_voicings_that_tell_major_minor_and_suspended_fourth_apart()
    {
        Drill first = DrillLibrary.Shipped.Drills.First();

        Assert.Equal("standard + 3-5@2", first.Setup.ToString());
        Assert.Equal(6, first.Voicings.Length);
        Assert.Equal(["E", "Em", "Esus4"], first.Voicings.Take(3).Select(voicing => voicing.Voicing.SoundingName));
        Assert.Equal(["D", "Dm", "Dsus4"], first.Voicings.Take(3).Select(voicing => voicing.Voicing.ShapeName));
        Assert.All(first.Voicings, voicing => Assert.True(Fingers(voicing.Voicing) <= 2));
        Assert.All(first.Voicings, voicing => Assert.True(Fingering.Of(voicing.Voicing, Hand.Small).IsGood));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_voicing_can_be_played(string id)
    {
        Drill drill = DrillLibrary.Shipped.Find(DrillId.Parse(id).Value)!;

        Assert.InRange(drill.Voicings.Length, 6, 10);
        Assert.NotNull(drill.Note);
        foreach (DrillVoicing voicing in drill.Voicings)
        {
            Assert.True(Span(voicing.Voicing) <= MostFrets, $"{voicing.Voicing} spans {Span(voicing.Voicing)} frets");
            Assert.True(Fingers(voicing.Voicing) <= MostFingers, $"{voicing.Voicing} takes {Fingers(voicing.Voicing)} fingers");
            Result<Fingering> fingering = Fingering.Of(voicing.Voicing, Hand.Medium);
            Assert.True(fingering.IsGood, $"{voicing.Voicing}: {(fingering.IsGood ? "" : fingering.Fault)}");
        }
    }

    // Of the eight oldest drills worked out apart from the engine by a script of some thirty lines: pitch classes above each possible root
    // against a table of chords. Of the others the engine's own names, whose shape names were compared with such a script's by eye.
    [Theory]
    [InlineData("first-six", "E Em Esus4 Aadd9 Bsus4 C#m7")]
    [InlineData("open-major", "A Asus4 Am Dadd9 D/A E F#m7 Bm11")]
    [InlineData("drone-colours", "E5 Esus2 Emaj7 E/G# Asus2 Amaj9 F#7sus4 B7")]
    [InlineData("low-drone", "E Em Esus4 Esus2 A B C#m7 F#m E/G#")]
    [InlineData("both-ends-free", "A Aadd9 E E/G# C#m F#m7 Badd4 Bsus4")]
    [InlineData("into-b-flat", "Bb Bbmaj7 Bbsus2 Eb Ebadd9 F F/A Gm7 Cm11")]
    [InlineData("top-three", "Dmaj7 D Dsus4 D6 D/F# Gmaj9 A Bm7 F#m")]
    [InlineData("two-clamps", "Emaj7 E Esus4 E/G# Amaj9 C#m7 G#m B B6")]
    [InlineData("open-major-degrees", "A D E E7 F#m Bm7 C#m G")]
    [InlineData("open-major-bass", "A/C# A/B F#m7 F#m7 E E/G# Esus4 Bm7")]
    [InlineData("open-major-moving", "Dadd9/A A6 Amaj7 Am7 E/A A")]
    [InlineData("drone-degrees", "E A B B7 C#m F#m7 G#m Dadd9")]
    [InlineData("drone-bass", "F#m7 E/G# A F#m7 Bsus4 D")]
    [InlineData("drone-moving", "Aadd9 Badd4 G6 Cmaj7 C#m7 E5 E")]
    [InlineData("low-drone-degrees", "A Aadd9 B7 B C#m7 F#m7 G#m D Esus4")]
    [InlineData("both-ends-degrees", "E Esus4 A B B7 C#m7 F#m7 G#m Dadd9")]
    [InlineData("two-basses", "A A Asus4 D E F#m F#m7 Bm7")]
    [InlineData("two-basses-colours", "A/C# E E7 Esus4 Dadd9 F#m F#m7 C#m G")]
    [InlineData("into-b-flat-two", "Bb/D F F7 F Gm Cm7 Dm Ab")]
    [InlineData("into-b", "B Bsus4 B/D# Eadd9 F# F#7 G#m7 C#m7")]
    [InlineData("into-d", "D Dsus4 Dm D/F# Gadd9 A Bm7 Em7")]
    [InlineData("into-g", "G Gm Gsus4 G/B Cadd9 Dsus4 Em7 Fadd9")]
    [InlineData("into-g-degrees", "G C D D7 Em Am7 Bm F")]
    [InlineData("into-a-flat", "Ab Abm Absus4 Ab/C Dbadd9 Ebsus4 Fm7 Bbm7")]
    [InlineData("top-three-degrees", "D G A7 Asus4 Bm Em Em7 Cadd9")]
    public void The_names_of_the_shipped_drills_are_these(string id, string names) =>
        Assert.Equal(names, string.Join(' ', DrillLibrary.Shipped.Find(DrillId.Parse(id).Value)!.Voicings.Select(voicing => voicing.Voicing.SoundingName)));

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_shipped_drill_survives_writing(string id)
    {
        DrillSheet sheet = DrillLibrary.Shipped.Sheets.Single(sheet => sheet.Drill.Id.ToString() == id);

        DrillReaderTests.AssertSame(sheet, DrillReader.Read(DrillWriter.Write(sheet), id + ".toml", DrillOrigin.Shipped).Sheet);
    }

    private static int Span(Voicing voicing)
    {
        int[] frets = [.. voicing.Strings.Where(sounding => sounding.Stop.IsFretted).Select(sounding => sounding.StoppedAt.Number)];
        return frets.Length == 0 ? 0 : frets.Max() - frets.Min() + 1;
    }

    // One barre at the lowest fret: it may lie over strings that are fretted at that fret or above, clamped above it, or muted, never
    // over one that should ring from below it, nor over a clamp at that fret. Written here a second time, apart from the engine.
    private static int Fingers(Voicing voicing)
    {
        int fretted = voicing.Strings.Count(sounding => sounding.Stop.IsFretted);
        int lowest = voicing.Strings.Where(sounding => sounding.Stop.IsFretted).Select(sounding => sounding.StoppedAt.Number).DefaultIfEmpty().Min();
        int run = 0;
        int longest = 0;
        foreach (SoundingString sounding in voicing.Strings)
        {
            bool isInTheWay = ClampLiesAt(voicing.Setup, sounding.Number, lowest) || (!sounding.Stop.IsMuted && sounding.StoppedAt.Number < lowest);
            run = isInTheWay ? 0 : sounding.StoppedAt.Number == lowest && sounding.Stop.IsFretted ? run + 1 : run;
            longest = Math.Max(longest, run);
        }

        return fretted == 0 ? 0 : fretted - longest + 1;
    }

    private static bool ClampLiesAt(Setup setup, StringNumber number, int fret) =>
        setup.Clamps.Any(clamp => clamp.Fret.Number == fret && clamp.Strings.Contains(number));
}
