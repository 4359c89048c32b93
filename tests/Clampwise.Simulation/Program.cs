using System.Collections.Concurrent;
using System.Diagnostics;
using Clampwise.Simulation;

// The whole table: how many seeds (1 unless said), how many shapes the pool holds (61 unless said).
int seeds = args.Length > 0 ? int.Parse(args[0]) : 1;
var pool = Pool.Fixed(args.Length > 1 ? int.Parse(args[1]) : 61);
var watch = Stopwatch.StartNew();
Console.WriteLine($"{pool.Items.Length} items in {pool.Items.Select(item => item.Drill.Setup.ToString()).Distinct().Count()} setups, seeds 1 to {seeds}");
var rows = new ConcurrentDictionary<(int Place, int Seed), Row>();
Parallel.ForEach(
    Enumerable.Range(1, seeds).SelectMany(seed => Learners.All(seed).Select((learner, place) => (seed, place, learner))),
    new ParallelOptions { MaxDegreeOfParallelism = 2 },
    one => rows[(one.place, one.seed)] = Table.Of(one.learner.Name, one.learner.Truth, pool, one.seed));
foreach (string line in Report.Of([.. rows.OrderBy(pair => pair.Key).Select(pair => pair.Value)]))
{
    Console.WriteLine(line);
}

Console.WriteLine($"{watch.Elapsed.TotalSeconds:0} s");
