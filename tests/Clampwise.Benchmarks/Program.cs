using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(Clampwise.Benchmarks.ReadingBenchmarks).Assembly).Run(args);
