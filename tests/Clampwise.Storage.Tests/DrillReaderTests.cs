using Clampwise.Practice;

namespace Clampwise.Storage.Tests;

public class DrillReaderTests
{
    private const string Good = """
        title = "Two shapes"
        setup = "standard + 3-5@2"
        order = 7
        note = "Slowly."
        directions = ["see-shape-name", "place"]

        [[voicing]]
        fretting = "006400"
        note = "The \"third\"."

        [[voicing]]
        fretting = "^ x 2 4 2 0 0"
        """;

    [Fact]
    public void Reads_every_key()
    {
        DrillReading reading = DrillReader.Read(Good, "two-shapes.toml", DrillOrigin.Own);

        Assert.Empty(reading.Faults);
        DrillSheet sheet = reading.Sheet!;
        Assert.Equal((7, DrillOrigin.Own), (sheet.Order, sheet.Origin));
        Assert.Equal(("two-shapes", "Two shapes", "Slowly."), (sheet.Drill.Id.ToString(), sheet.Drill.Title, sheet.Drill.Note));
        Assert.Equal([Direction.SeeShapeSayShapeName, Direction.NamePlaceShape], sheet.Drill.Directions.ToArray());
        Assert.Equal(["006400", "x46400"], sheet.Drill.Voicings.Select(voicing => voicing.Voicing.Fretting.ToString()));
        Assert.Equal(["The \"third\".", null], sheet.Drill.Voicings.Select(voicing => voicing.Note));
    }

    [Fact]
    public void What_may_be_left_out_has_a_default()
    {
        DrillSheet sheet = DrillReader.Read("title='t'\nsetup='2-4@2'\n[[voicing]]\nfretting='x00000'", "a.toml", DrillOrigin.Own).Sheet!;

        Assert.Equal(DrillSheet.LastOrder, sheet.Order);
        Assert.Equal(Directions.All, sheet.Drill.Directions);
        Assert.Null(sheet.Drill.Note);
    }

    [Theory]
    [InlineData("order = 7", "order = \"7\"", "two-shapes.toml, line 3, column 9: 'order' takes a whole number, 0 to 9999")]
    [InlineData("order = 7", "order = 10000", "two-shapes.toml, line 3, column 9: 'order' takes a whole number, 0 to 9999")]
    [InlineData("order = 7", "oder = 7", "two-shapes.toml, line 3, column 1: there is no key 'oder' here: expected one of title, setup, order, note, directions")]
    [InlineData("title = \"Two shapes\"", "title = 2", "two-shapes.toml, line 1, column 9: 'title' takes a text in quotes")]
    [InlineData("title = \"Two shapes\"\n", "", "two-shapes.toml, line 1, column 1: 'title' is missing: give it a text")]
    [InlineData("title = \"Two shapes\"", "title = \" \"", "two-shapes.toml, line 1, column 9: 'title' is missing: give it a text")]
    [InlineData("3-5@2", "3-9@2", "two-shapes.toml, line 2, column 23: there is no string 9: strings are numbered 1, the highest, to 6")]
    [InlineData("006400", "00640", "two-shapes.toml, line 8, column 18: expected 6 strings, lowest first, found 5")]
    [InlineData("006400", "00640z", "two-shapes.toml, line 8, column 18: string 1: expected x, 0 or a fret, found 'z'")]
    [InlineData("006400", "002400", "two-shapes.toml, line 8, column 15: string 4 is held by the clamp at 2: a finger at fret 2 changes nothing, use a fret above 2 or 0")]
    [InlineData("006400", "x46400", "two-shapes.toml, line 12, column 12: x46400 is in this drill already: each voicing stands once")]
    [InlineData("\"place\"", "\"plaice\"", "two-shapes.toml, line 5, column 33: there is no direction 'plaice': expected one of see-shape-name, see-sounding-name, place, hear-name, hear-pick, hear-compare, shape-to-sounding, sounding-to-shape, change")]
    [InlineData("[\"see-shape-name\", \"place\"]", "[]", "two-shapes.toml, line 5, column 14: 'directions' is empty: name at least one, or leave it out for all of them")]
    [InlineData("[\"see-shape-name\", \"place\"]", "\"place\"", "two-shapes.toml, line 5, column 14: 'directions' takes a list of texts, such as [\"see-shape-name\", \"place\"]")]
    [InlineData("note = \"The \\\"third\\\".\"", "behind = 1", "two-shapes.toml, line 9, column 10: 'behind' takes true or false")]
    public void Says_what_is_wrong_and_where(string part, string instead, string expected)
    {
        string text = Good.Replace(part, instead, StringComparison.Ordinal);
        Assert.NotEqual(Good, text);

        DrillReading reading = DrillReader.Read(text, "two-shapes.toml", DrillOrigin.Own);

        Assert.Null(reading.Sheet);
        Assert.Equal([expected], reading.Faults.Select(fault => fault.ToString()));
    }

    [Fact]
    public void Reports_all_faults_of_a_file_at_once()
    {
        string text = Good.Replace("order = 7", "order = -1", StringComparison.Ordinal).Replace("006400", "002400", StringComparison.Ordinal);

        Assert.Equal([3, 8], DrillReader.Read(text, "two-shapes.toml", DrillOrigin.Own).Faults.Select(fault => fault.Line));
    }

    [Theory]
    [InlineData("title = \"open", 1)]
    [InlineData("title = \"a\"\nsetup 2-4@2\n", 2)]
    [InlineData("title = \"a\"\ntitle = \"b\"\nsetup = \"2-4@2\"\n", 2)]
    public void Broken_syntax_is_reported_with_its_line(string text, int line)
    {
        DrillReading reading = DrillReader.Read(text, "broken.toml", DrillOrigin.Own);

        Assert.Null(reading.Sheet);
        Assert.Equal(line, reading.Faults[0].Line);
        Assert.NotEmpty(reading.Faults[0].Message);
    }

    [Fact]
    public void A_drill_without_voicings_and_a_bad_file_name_are_refused()
    {
        Assert.Equal("a.toml, line 1, column 1: the drill has no voicing: add at least one [[voicing]] with a fretting", FaultOf("a.toml", ""));
        Assert.StartsWith("A b.toml, line 1, column 1: the drill's id is its file's name: expected a drill id", FaultOf("A b.toml", "[[voicing]]\nfretting='x00000'"), StringComparison.Ordinal);
        Assert.Equal("a.toml, line 3, column 1: there is no table 'voicing' in a drill: expected [[voicing]]", FaultOf("a.toml", "[voicing]\nfretting='x00000'"));

        static string FaultOf(string file, string voicings) =>
            DrillReader.Read("title='t'\nsetup='2-4@2'\n" + voicings, file, DrillOrigin.Own).Faults[0].ToString();
    }

    [Fact]
    public void A_finger_behind_the_clamp_must_be_asked_for_and_is_written_back_so()
    {
        const string Text = "title='t'\nsetup='3-5@4'\n[[voicing]]\nfretting='000002'\n";
        Assert.Contains("behind clamp", DrillReader.Read(Text, "a.toml", DrillOrigin.Own).Faults[0].Message, StringComparison.Ordinal);

        DrillSheet asked = DrillReader.Read(Text + "behind = true", "a.toml", DrillOrigin.Own).Sheet!;
        Assert.Contains("behind = true", DrillWriter.Write(asked), StringComparison.Ordinal);
        AssertSame(asked, DrillReader.Read(DrillWriter.Write(asked), "a.toml", DrillOrigin.Own).Sheet);
    }

    [Fact]
    public void What_is_written_reads_back()
    {
        DrillSheet first = DrillReader.Read(Good, "two-shapes.toml", DrillOrigin.Own).Sheet!;
        DrillSheet awkward = first with { Drill = first.Drill with { Title = "\"\\ \t\n\u0001 ♯ é", Note = "" } };

        AssertSame(first, DrillReader.Read(DrillWriter.Write(first), "two-shapes.toml", DrillOrigin.Own).Sheet);
        AssertSame(awkward, DrillReader.Read(DrillWriter.Write(awkward), "two-shapes.toml", DrillOrigin.Own).Sheet);
    }

    internal static void AssertSame(DrillSheet expected, DrillSheet? found)
    {
        Assert.NotNull(found);
        Assert.Equal(expected with { Drill = found.Drill }, found);
        Assert.Equal((expected.Drill.Id, expected.Drill.Title, expected.Drill.Setup, expected.Drill.Note), (found.Drill.Id, found.Drill.Title, found.Drill.Setup, found.Drill.Note));
        Assert.Equal(expected.Drill.Voicings.AsEnumerable(), found.Drill.Voicings);
        Assert.Equal(expected.Drill.Directions.AsEnumerable(), found.Drill.Directions);
    }

    // The parser throws on these instead of reporting them.
    [Fact]
    public void Arrays_nested_too_deep_are_a_fault_with_its_line()
    {
        DrillReading read = DrillReader.Read($"title = \"x\"\na = {new string('[', 100)}", "deep.toml", DrillOrigin.Own);
        Assert.Null(read.Sheet);
        Assert.StartsWith("deep.toml, line ", Assert.Single(read.Faults).ToString());
    }
}
