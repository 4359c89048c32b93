using BenchmarkDotNet.Attributes;
using Clampwise.Practice;
using Clampwise.Storage;
using Clampwise.Storage.Harness;

namespace Clampwise.Benchmarks;

/// <summary>
/// The store with 200,000 attempts over 5,000 items, the size that years of daily drills come to. The aims: opened and the memory
/// loaded well under the 150 ms of a start, an answer stored under 5 ms, a rebuild under 3 s, the database under 80 MB. The sizes are
/// printed when the log is made. Storing is as fast as the disk flushes.
/// </summary>
[MemoryDiagnoser]
[SimpleJob(launchCount: 1, warmupCount: 2, iterationCount: 8)]
public class StorageBenchmarks
{
    private const int AttemptCount = 200_000;
    private const int ItemCount = 5_000;
    private readonly DataFolder _folder = new(Directory.CreateTempSubdirectory("clampwise-bench-").FullName);
    private ProgressStore? _store;
    private int _next = AttemptCount;

    [GlobalSetup]
    public void MakeLog()
    {
        using (FileStream journal = File.Create(_folder.Journal))
        {
            LogExport.WriteJsonLines(Enumerable.Range(0, AttemptCount).Select(number => Answers.Of(number, ItemCount)), journal);
        }

        using (ProgressStore store = Open())
        {
            Console.WriteLine($"// {store.LoadMemory(FsrsSettings.Usual).Items.Count} items");
        }

        foreach (string file in Directory.GetFiles(_folder.Root, "*", SearchOption.AllDirectories))
        {
            Console.WriteLine($"// {Path.GetFileName(file)}: {new FileInfo(file).Length / 1e6:F1} MB");
        }
    }

    [GlobalSetup(Targets = [nameof(Store_an_answer), nameof(Rebuild), nameof(Read_everything)])]
    public void MakeLogAndOpen()
    {
        MakeLog();
        _store = Open();
    }

    [GlobalCleanup]
    public void Clean()
    {
        _store?.Dispose();
        Directory.Delete(_folder.Root, recursive: true);
    }

    [Benchmark]
    public int Open_and_load_memory()
    {
        using ProgressStore store = Open();
        return store.LoadMemory(FsrsSettings.Usual).AttemptCount;
    }

    [Benchmark]
    public bool Store_an_answer() => _store!.Append(Answers.Of(_next++, ItemCount)) is null;

    [Benchmark]
    public int Rebuild() => _store!.Rebuild().Value;

    [Benchmark]
    public int Read_everything() => _store!.ReadAll().Count;

    private ProgressStore Open() => ProgressStore.Open(_folder, TimeProvider.System).Value;
}
