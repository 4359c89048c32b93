using System.Numerics;

namespace Clampwise.Fretboard;

/// <summary>
/// Counts the frettings of a space by published rules alone, without prices or a hand, so that others can count the same. Those rules
/// let a barre lie across a clamp at its own fret, which a hand cannot: <see cref="VoicingIndex"/> leaves such frettings out.
/// </summary>
public sealed record FrettingCounter
{
    /// <summary>Which frettings are looked at.</summary>
    public FrettingSpace Space { get; init; } = FrettingSpace.Usual;

    /// <summary>The most fingers, 0 up; eight or more let everything pass.</summary>
    public int Fingers { get; init; } = 4;

    /// <summary>How barres count.</summary>
    public BarreRule Barres { get; init; } = BarreRule.One;

    /// <summary>The fewest sounding strings.</summary>
    public int MinStrings { get; init; } = 1;

    /// <summary>True to leave out frettings with a muted string between sounding ones.</summary>
    public bool Unbroken { get; init; }

    /// <summary>How many frettings of a setup pass.</summary>
    public long Count(Setup setup)
    {
        var visitor = new Counting(setup, this, new PatternTables(setup, Space.Span, usesThumb: false, clampsBlock: false));
        new SpaceWalk(setup, Space).Run(ref visitor);
        return visitor.Passed;
    }

    private struct Counting(Setup setup, FrettingCounter rules, PatternTables tables) : SpaceWalk.IVisitor
    {
        private readonly int _stringCount = setup.StringCount;
        private PatternTable _table = tables.At(0);

        public long Passed { get; private set; }

        public void Enter(int lowestFret) => _table = tables.At(lowestFret);

        public void Visit(in WalkedFretting fretting)
        {
            int sounding = PackedVoicing.SoundingBits(fretting.Stops, _stringCount);
            bool passes = BitOperations.PopCount((uint)sounding) >= rules.MinStrings
                && (!rules.Unbroken || BitOperations.IsPow2(sounding + (sounding & -sounding)))
                && _table.FewestFingers(fretting.Slot, rules.Barres) <= rules.Fingers;
            Passed += passes ? 1 : 0;
        }
    }
}
