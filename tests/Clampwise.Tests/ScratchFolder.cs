using Clampwise.Storage;

namespace Clampwise.Tests;

/// <summary>A folder that goes away with the test.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("clampwise-test-").FullName;

    public DataFolder Data => new(Root);

    public string Settings => Path.Combine(Root, "settings.toml");

    public ScratchFolder With(string file, string text)
    {
        string path = Path.Combine(Root, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return this;
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
