namespace Clampwise.Simulation;

/// <summary>The learners that planners are judged by.</summary>
public static class Learners
{
    /// <summary>Each with its name.</summary>
    public static IReadOnlyList<(string Name, Func<ITruth> Truth)> All(int seed) =>
    [
        ("fast", () => new Activation(1.0, seed)),
        ("average", () => new Activation(0.75, seed)),
        ("forgetful", () => new Activation(0.55, seed)),
        ("two stores", () => new TwoStores(seed)),
        ("power", () => new PowerTransfer(seed)),
        ("the model", () => new PublishedModel(seed)),
    ];
}
