using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The wording of every fault and remark that this layer reports.</summary>
internal static class PracticeWords
{
    public static Fault NoSuchDirection(string found, IEnumerable<string> codes) =>
        new($"there is no direction '{found}': expected one of {string.Join(", ", codes)}");

    public static Fault BadItemText(string found) =>
        new($"expected an item as 'rig | shape | direction', found '{found}'");

    public static Fault BadShapeText(string found) =>
        new($"expected a shape as 'rig | shape', found '{found}'");

    public static Fault BadId(string found) => new($"expected an id of 32 hexadecimal digits, found '{found}'");

    public static Fault BadDrillId(string found) =>
        new($"expected a drill id of lower-case letters, digits and single hyphens, such as open-a, found '{found}'");

    public static Fault WrongWeightCount(int found) => new($"expected {FsrsWeights.Count} weights, found {found}");

    public static Fault WeightOutOfRange(int index, double found, double lowest, double highest) =>
        new($"weight w{index} must lie from {lowest} to {highest}, found {found}");
}
