namespace Clampwise.Tests;

/// <summary>Finds the files of the clone that the tests were built in.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string Read(params string[] path) => File.ReadAllText(Path.Combine([Root, .. path]));

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Practice.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("Practice.sln was not found above the tests.");
    }
}
