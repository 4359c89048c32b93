using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(Clampwise.Benchmarks.SoundBenchmarks).Assembly).Run(args);
