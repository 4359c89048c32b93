using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>A fretting on the walk, with what is known of it so far.</summary>
/// <param name="Stops">The stop of each string in five bits, the lowest string lowest: see <see cref="StringStop"/>.</param>
/// <param name="Slot">Its slot in a <see cref="PatternTable"/>.</param>
/// <param name="Classes">One bit for each pitch class that sounds, C lowest.</param>
/// <param name="Lowest">MIDI number of the lowest pitch.</param>
/// <param name="ClampPoints">The price of fingers beside and behind clamps.</param>
internal readonly record struct WalkedFretting(ulong Stops, int Slot, int Classes, int Lowest, float ClampPoints)
{
    public int BassClass => Lowest % PitchClass.Count;

    public WalkedFretting With(int index, int stop, int midi, int slot, float clampPoints) => new(
        Stops | ((ulong)stop << (index * PackedVoicing.BitsEach)),
        Slot + slot,
        Classes | (1 << (midi % PitchClass.Count)),
        Math.Min(Lowest, midi),
        ClampPoints + clampPoints);
}
