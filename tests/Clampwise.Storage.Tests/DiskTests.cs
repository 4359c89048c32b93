using Clampwise.Theory;

namespace Clampwise.Storage.Tests;

public class DiskTests
{
    [Fact]
    public void A_file_is_there_as_a_whole_or_stays_as_it_was()
    {
        using var folder = new ScratchFolder();
        string path = Path.Combine(folder.Root, "within", "a.wav");
        Assert.Equal(3, Disk.WriteWhole(path, stream => Written(stream, 3), makesFolder: true).Value);
        Result<int> torn = Disk.WriteWhole<int>(path, stream =>
        {
            Written(stream, 1);
            throw new IOException("no room left");
        });
        Assert.Equal($"{path} could not be written: no room left", torn.Fault.Message);
        Assert.Equal(3, new FileInfo(path).Length);
        Assert.Equal([path], Directory.GetFiles(folder.Root, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_folder_of_that_name_and_a_folder_that_cannot_be_made_are_faults_and_leave_nothing()
    {
        using var folder = new ScratchFolder();
        Directory.CreateDirectory(Path.Combine(folder.Root, "folder"));
        File.WriteAllText(Path.Combine(folder.Root, "file"), "");
        Assert.False(Disk.WriteWhole(Path.Combine(folder.Root, "folder"), stream => Written(stream, 1)).IsGood);
        Assert.False(Disk.WriteWhole(Path.Combine(folder.Root, "file", "a"), stream => Written(stream, 1), makesFolder: true).IsGood);
        Assert.False(Disk.WriteWhole(Path.Combine(folder.Root, "none", "a"), stream => Written(stream, 1)).IsGood);
        Assert.Equal([Path.Combine(folder.Root, "file")], Directory.GetFiles(folder.Root));
    }

    [LinuxFact]
    public void A_device_is_written_to_and_stays_one()
    {
        Assert.Equal(2, Disk.WriteWhole("/dev/null", stream => Written(stream, 2)).Value);
        Assert.False(File.GetAttributes("/dev/null").HasFlag(FileAttributes.Archive));
        Assert.True(File.Exists("/dev/null"));
    }

    private static int Written(Stream stream, int count)
    {
        stream.Write(new byte[count]);
        return count;
    }
}
