using Clampwise.Screens;

namespace Clampwise.Tests.Screens;

/// <summary>The kinds of pages that the program has.</summary>
internal static class Pages
{
    /// <summary>All that can be opened.</summary>
    public static IReadOnlyList<Type> All { get; } = [.. typeof(Page).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Page)) && !type.IsAbstract)];
}
