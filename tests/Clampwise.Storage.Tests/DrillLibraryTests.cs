using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage.Tests;

public sealed class DrillLibraryTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void Without_a_data_folder_the_shipped_drills_are_there()
    {
        DrillLibrary library = DrillLibrary.Load(_scratch.Data);

        Assert.Equal(DrillLibrary.Shipped.Sheets.Length, library.Sheets.Length);
        Assert.False(Directory.Exists(_scratch.Data.Root));
    }

    [Fact]
    public void A_drill_that_is_saved_is_found_again_and_comes_last_unless_it_says_otherwise()
    {
        Assert.Null(DrillLibrary.Save(_scratch.Data, Own("zz-mine")));
        DrillLibrary library = DrillLibrary.Load(_scratch.Data);

        Assert.Empty(library.Faults);
        Assert.Equal(("zz-mine", DrillOrigin.Own), (library.Sheets[^1].Drill.Id.ToString(), library.Sheets[^1].Origin));
        Assert.Equal(["zz-mine.toml"], Directory.GetFiles(_scratch.Data.Drills).Select(Path.GetFileName));
    }

    [Fact]
    public void A_drill_is_replaced_only_when_asked()
    {
        Assert.Null(DrillLibrary.Save(_scratch.Data, Own("mine")));
        Assert.Equal("there is a drill 'mine' of yours already: choose another id, or ask to replace it", DrillLibrary.Save(_scratch.Data, Own("mine"))?.Message);
        Assert.Null(DrillLibrary.Save(_scratch.Data, Own("mine"), mayReplace: true));
    }

    [Fact]
    public void An_own_drill_stands_in_for_a_shipped_one_of_the_same_id()
    {
        DrillId first = DrillLibrary.Shipped.Drills.First().Id;
        Assert.Null(DrillLibrary.Save(_scratch.Data, Own(first.ToString())));

        DrillSheet found = Assert.Single(DrillLibrary.Load(_scratch.Data).Sheets, sheet => sheet.Drill.Id == first);
        Assert.Equal(DrillOrigin.Own, found.Origin);
    }

    [Fact]
    public void A_broken_file_is_named_and_the_others_are_taken()
    {
        Directory.CreateDirectory(_scratch.Data.Drills);
        File.WriteAllText(Path.Combine(_scratch.Data.Drills, "broken.toml"), "title = 'x'\nsetup = '3-5@99'\n");

        DrillLibrary library = DrillLibrary.Load(_scratch.Data);

        Assert.Equal(DrillLibrary.Shipped.Sheets.Length, library.Sheets.Length);
        Assert.StartsWith("broken.toml, line 2, column 14: expected the clamp's fret", Assert.Single(library.Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_a_fault()
    {
        Directory.CreateDirectory(_scratch.Data.Root);
        File.WriteAllText(_scratch.Data.Drills, "a file where the folder should be");

        Fault? fault = DrillLibrary.Save(_scratch.Data, Own("mine"));

        Assert.Contains("could not be written", fault?.Message, StringComparison.Ordinal);
    }

    private static DrillSheet Own(string id) =>
        DrillReader.Read("title='Mine'\nsetup='2-4@2'\n[[voicing]]\nfretting='x00000'", id + ".toml", DrillOrigin.Own).Sheet!;
}
