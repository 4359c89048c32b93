using Clampwise.Practice;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Theory;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Application.Tests;

/// <summary>A desk with the shipped drills, a log in memory, a sound that is only noted down, a clock that stands, and a folder that goes away.</summary>
internal sealed class Bench : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("clampwise-bench-").FullName;

    public Bench() => Time.SetUtcNow(new DateTimeOffset(2026, 3, 2, 18, 0, 0, TimeSpan.Zero));

    public FakeTimeProvider Time { get; } = new();

    public DataFolder Folder => new(_root);

    public MemoryLog Log { get; } = new();

    public CapturedOut Sound { get; } = new();

    /// <summary>A desk as the start of the program makes one: what was learned comes from the log.</summary>
    public Desk Open(ISoundOut? sound = null)
    {
        int ids = Log.Entries.Count;
        return new Desk(
            new PlayerRecord(Log, MemoryState.Rebuild(Log.Entries, FsrsSettings.Usual)),
            new DrillShelf(DrillLibrary.Load(Folder).Drills, Folder),
            new SoundInUse(sound ?? Sound),
            new Circumstances(Time, () => new Guid(++ids, 0, 0, new byte[8]), () => 7),
            new PracticeSettings());
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    internal sealed class MemoryLog : IAttemptLog
    {
        public List<LogEntry> Entries { get; } = [];

        public Fault? Refusal { get; set; }

        public Fault? Append(LogEntry entry)
        {
            if (Refusal is null)
            {
                Entries.Add(entry);
            }

            return Refusal;
        }

        public IReadOnlyList<LogEntry> ReadAll() => Entries;
    }
}
