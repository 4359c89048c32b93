using System.Collections.Immutable;

namespace Clampwise.Fretboard.Tests;

/// <summary>One line of a teacher's list.</summary>
/// <param name="Setup">The setup that it stands under.</param>
/// <param name="Key">What is left of the sign.</param>
/// <param name="Values">What is right of it, best first.</param>
public sealed record TeacherLine(string Setup, string Key, ImmutableArray<string> Values);
