namespace Clampwise.Storage.Tests;

/// <summary>A folder for one test, taken away afterwards. The data folder in it does not exist yet.</summary>
public sealed class ScratchFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("clampwise-test-").FullName;

    public DataFolder Data => new(Path.Combine(Root, "data"));

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
