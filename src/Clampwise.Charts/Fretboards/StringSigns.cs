using System.Collections.Immutable;

namespace Clampwise.Charts;

/// <summary>What stands where fingers are, and before the nut where strings ring.</summary>
/// <param name="Texts">A sign for each string, lowest string first; empty for plain dots. An empty text leaves the plain dot.</param>
/// <param name="Width">The columns kept for a sign, so that the drawing stands still while signs change.</param>
/// <param name="IsOnRinging">True if ringing strings show theirs too.</param>
public sealed record StringSigns(ImmutableArray<string> Texts, int Width, bool IsOnRinging)
{
    /// <summary>Plain dots.</summary>
    public static StringSigns None { get; } = new([], 1, false);
}
