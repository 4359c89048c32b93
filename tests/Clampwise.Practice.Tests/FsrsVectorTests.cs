using System.Text.Json;
using System.Text.Json.Nodes;

namespace Clampwise.Practice.Tests;

/// <summary>
/// Every step of every sequence in data/fsrs-vectors.json, made by ts-fsrs 5.4.2 (npm registry, MIT), a general-purpose
/// implementation of the published model FSRS-6, within the tolerances that the file states; intervals exact.
/// </summary>
public class FsrsVectorTests
{
    private const double Tolerance = 2e-8;
    private static readonly JsonNode s_file = JsonNode.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "fsrs-vectors.json")))!;

    public static TheoryData<string> Sequences => [.. s_file["sequences"]!.AsArray().Select(sequence => (string)sequence!["id"]!)];

    [Fact]
    public void The_file_is_whole() => Assert.Equal((60, 665), (Sequences.Count, s_file["sequences"]!.AsArray().Sum(s => s!["reviews"]!.AsArray().Count)));

    [Fact]
    public void The_default_weights_are_the_published_ones() =>
        Assert.Equal(s_file["defaultWeights"]!.Deserialize<double[]>(), FsrsWeights.Default.Values);

    [Theory]
    [MemberData(nameof(Sequences))]
    public void Reviews(string id)
    {
        JsonNode sequence = s_file["sequences"]!.AsArray().Single(node => (string)node!["id"]! == id)!;
        Fsrs model = ModelOf(sequence);
        Memory? memory = null;
        foreach (JsonNode review in sequence["reviews"]!.AsArray().Select(node => node!))
        {
            int days = (int)review["elapsedDays"]!;
            var grade = (Grade)(int)review["grade"]!;
            if (memory is { } known)
            {
                Near((double)review["retrievabilityBefore"]!, model.Recall(known.Stability, days));
            }

            memory = memory is { } before ? model.Next(before, days, grade) : model.First(grade);
            Near((double)review["stability"]!, memory.Value.Stability);
            Near((double)review["difficulty"]!, memory.Value.Difficulty);
            Assert.Equal((int)review["interval"]!, model.IntervalDays(memory.Value.Stability));
        }

        foreach (JsonNode point in sequence["curve"]!.AsArray().Select(node => node!))
        {
            Near((double)point["retrievability"]!, model.Recall(memory!.Value.Stability, (double)point["days"]!));
        }
    }

    private static Fsrs ModelOf(JsonNode sequence)
    {
        FsrsWeights weights = sequence["weights"] is JsonArray own ? FsrsWeights.Create(own.Deserialize<double[]>()!).Value : FsrsWeights.Default;
        return new Fsrs(weights, new FsrsSettings(
            (double)sequence["desiredRetention"]!, (bool)sequence["shortTerm"]!, (int)sequence["maximumInterval"]!));
    }

    private static void Near(double expected, double found) =>
        Assert.True(Math.Abs(expected - found) <= Tolerance * Math.Max(1, Math.Abs(expected)), $"expected {expected}, found {found}");
}
