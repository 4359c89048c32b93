namespace Clampwise.Tests.Screens;

/// <summary>
/// Compares a screen with the text kept in tests/Clampwise.Tests/Screens/golden. A missing text fails; with CLAMPWISE_RENEW_GOLDEN=1
/// the texts are written anew, to be looked at before they are committed.
/// </summary>
internal static class Golden
{
    public static void Check(string name, string screen)
    {
        string path = Path.Combine(Repository.Root, "tests", "Clampwise.Tests", "Screens", "golden", $"{name}.txt");
        if (Environment.GetEnvironmentVariable("CLAMPWISE_RENEW_GOLDEN") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, screen);
            return;
        }

        Assert.True(File.Exists(path), $"There is no golden text {name}.txt; the screen was:\n{screen}");
        Assert.Equal(File.ReadAllText(path), screen);
    }
}
