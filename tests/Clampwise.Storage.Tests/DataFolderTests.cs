namespace Clampwise.Storage.Tests;

public class DataFolderTests
{
    [Fact]
    public void A_folder_that_is_asked_for_wins() =>
        Assert.Equal(Path.GetFullPath("some/where"), DataFolder.Find("some/where", _ => "ignored").Value.Root);

    [Fact]
    public void An_empty_name_is_refused() =>
        Assert.Equal("the data folder has no name: give the path of a folder", DataFolder.Find("", _ => null).Fault.Message);

    // XDG Base Directory Specification 0.8: $XDG_DATA_HOME, else $HOME/.local/share; relative paths are to be ignored.
    [LinuxTheory]
    [InlineData("/data", "/home/player", "/data/clampwise")]
    [InlineData("", "/home/player", "/home/player/.local/share/clampwise")]
    [InlineData(null, "/home/player", "/home/player/.local/share/clampwise")]
    [InlineData("relative", "/home/player", "/home/player/.local/share/clampwise")]
    public void On_Linux_the_XDG_specification_is_followed(string? xdg, string home, string expected) =>
        Assert.Equal(expected, DataFolder.Find(null, name => name == "HOME" ? home : xdg).Value.Root);

    [LinuxFact]
    public void Without_a_home_folder_the_player_is_told_what_to_do() =>
        Assert.Contains("--data", DataFolder.Find(null, _ => null).Fault.Message, StringComparison.Ordinal);
}
