namespace Clampwise.Theory;

/// <summary>A written chord name: root, what stands after it, and a bass if it is another note.</summary>
public sealed record ChordSymbol(NoteName Root, string Suffix, NoteName? Bass = null)
{
    /// <inheritdoc/>
    public override string ToString() => Bass is { } bass ? $"{Root}{Suffix}/{bass}" : $"{Root}{Suffix}";
}
