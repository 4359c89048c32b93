using System.Collections.Concurrent;
using System.Diagnostics;
using Clampwise.Simulation;

// The whole table: clampwise.simulation [SEEDS] [SHAPES].
int seeds = args.Length > 0 ? int.Parse(args[0]) : 1;
var pool = Pool.Fixed(args.Length > 1 ? int.Parse(args[1]) : 61);
var watch = Stopwatch.StartNew();
Console.WriteLine($"{pool.Items.Length} items in {pool.Items.Select(item => item.Drill.Setup.ToString()).Distinct().Count()} setups");
if (args.Length > 2)
{
    string[] lines = new string[Learners.All(1).Count * seeds];
    Parallel.For(0, lines.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, place =>
    {
        int seed = 1 + (place % seeds);
        (string name, Func<ITruth> truth) = Learners.All(seed)[place / seeds];
        lines[place] = Table.Quick(name, truth, pool, seed);
    });
    Array.ForEach(lines, Console.WriteLine);
    Console.WriteLine($"{watch.Elapsed.TotalSeconds:0} s");
    return;
}

var rows = new ConcurrentDictionary<(int Seed, int Place), Row>();
Parallel.ForEach(
    Enumerable.Range(1, seeds).SelectMany(seed => Learners.All(seed).Select((learner, place) => (seed, place, learner))),
    new ParallelOptions { MaxDegreeOfParallelism = 2 },
    one => rows[(one.seed, one.place)] = Table.Of(one.learner.Name, one.learner.Truth, pool, one.seed));
foreach (Row row in rows.OrderBy(pair => (pair.Key.Place, pair.Key.Seed)).Select(pair => pair.Value))
{
    Console.WriteLine(row.Line);
}

Console.WriteLine($"{watch.Elapsed.TotalSeconds:0} s");
