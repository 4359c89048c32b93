using Clampwise.Theory;

namespace Clampwise.Practice;

/// <summary>The identity of a session.</summary>
/// <param name="Value">Made outside by the maker of identities that is passed in.</param>
public readonly record struct SessionId(Guid Value)
{
    /// <summary>Reads 32 hexadecimal digits.</summary>
    public static Result<SessionId> Parse(string text) =>
        Guid.TryParseExact(text, "N", out Guid value) ? new SessionId(value) : PracticeWords.BadId(text);

    /// <summary>32 hexadecimal digits.</summary>
    public override string ToString() => Value.ToString("N");
}
