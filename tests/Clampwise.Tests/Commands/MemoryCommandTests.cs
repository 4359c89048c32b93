namespace Clampwise.Tests.Commands;

public sealed class MemoryCommandTests : IDisposable
{
    private readonly string _data = Directory.CreateTempSubdirectory("clampwise-memory").FullName;

    public void Dispose() => Directory.Delete(_data, recursive: true);

    [Fact]
    public void The_published_weights_are_in_use_until_there_are_enough_answers()
    {
        // The 21 published default weights of FSRS-6 start with these.
        Assert.Contains("0.212, 1.2931, 2.3065, 8.2956", CommandRun.Of("memory", "--data", _data).Out);
        Assert.Contains("A new shape named right at your pace has fallen to 90 % after 2 days", CommandRun.Of("memory", "--data", _data).Out);
        Assert.Contains("0 answers are too few to fit it, 1000 are needed", CommandRun.Of("memory", "--fit", "--data", _data).Out);
        Assert.Contains("nothing to take back", CommandRun.Of("memory", "--undo", "--data", _data).Out);
    }
}
