using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// The folder in which everything of one player lies. By default <c>clampwise</c> in the place that the platform keeps for a
/// program's data: on Linux <c>$XDG_DATA_HOME</c> or <c>~/.local/share</c> (XDG Base Directory Specification 0.8), on macOS
/// <c>~/Library/Application Support</c>, on Windows the local application data.
/// </summary>
/// <param name="Root">Full path of the folder; it need not exist yet.</param>
public sealed record DataFolder(string Root)
{
    private const string Name = "clampwise";

    /// <summary>The journal of everything that was answered: the truth.</summary>
    public string Journal => Path.Combine(Root, "journal.jsonl");

    /// <summary>The database, which can be rebuilt from the journal.</summary>
    public string Database => Path.Combine(Root, "progress.db");

    /// <summary>Held open for as long as a process may write.</summary>
    public string LockFile => Path.Combine(Root, "lock");

    /// <summary>The session that was left, to take it up again.</summary>
    public string Session => Path.Combine(Root, "session.json");

    /// <summary>Drills of the player's own.</summary>
    public string Drills => Path.Combine(Root, "drills");

    /// <summary>Dated backups.</summary>
    public string Backups => Path.Combine(Root, "backups");

    /// <summary>Damaged files that were put out of the way.</summary>
    public string KeptAside => Path.Combine(Root, "kept-aside");

    /// <summary>The folder that was asked for, else the platform's own.</summary>
    /// <param name="given">What the player asked for; null for the default.</param>
    /// <param name="environment">Reads an environment variable.</param>
    public static Result<DataFolder> Find(string? given, Func<string, string?> environment)
    {
        if (given is not null)
        {
            return given.Length > 0 ? new DataFolder(Path.GetFullPath(given)) : StorageWords.EmptyFolderName;
        }

        string data = OperatingSystem.IsLinux() ? XdgDataHome(environment) : Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData);
        return data.Length > 0 ? new DataFolder(Path.Combine(data, Name)) : StorageWords.NoDataFolder;
    }

    // The specification: a relative path is invalid and is to be ignored.
    private static string XdgDataHome(Func<string, string?> environment)
    {
        string? set = environment("XDG_DATA_HOME");
        if (!string.IsNullOrEmpty(set) && Path.IsPathRooted(set))
        {
            return set;
        }

        string? home = environment("HOME");
        return string.IsNullOrEmpty(home) ? "" : Path.Combine(home, ".local", "share");
    }
}
