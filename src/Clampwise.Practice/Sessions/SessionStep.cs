using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>What an event makes of a session.</summary>
/// <param name="State">The state after it.</param>
/// <param name="Effects">What is to be done, in order.</param>
public sealed record SessionStep(SessionState State, ImmutableArray<SessionEffect> Effects)
{
    internal static SessionStep To(SessionState state, params ImmutableArray<SessionEffect> effects) => new(state, effects);

    internal static SessionStep Refused(SessionState state, Fault fault) => new(state, [new SessionEffect.Refuse(fault)]);

    internal SessionStep Before(params ImmutableArray<SessionEffect> effects) => this with { Effects = [.. effects, .. Effects] };
}
