using Clampwise.Practice;

namespace Clampwise.Application;

/// <summary>Clock, identities and seeds, as they are passed in.</summary>
/// <param name="Time">The clock, with its time zone.</param>
/// <param name="NewId">Makes identities.</param>
/// <param name="NewSeed">Makes seeds of chance.</param>
public sealed record Circumstances(TimeProvider Time, Func<Guid> NewId, Func<int> NewSeed)
{
    /// <summary>Now.</summary>
    public Moment Now => Moment.Now(Time);

    /// <summary>When it is, with a fresh identity.</summary>
    public Stamp Stamp() => new(Now, new EntryId(NewId()));
}
