using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// Visits every fretting of a space once: all with no finger, then all whose lowest finger is at fret 1, 2 and so on. A string is
/// muted, rings, or has a finger above its ground and within the span. At least one string sounds.
/// </summary>
internal sealed class SpaceWalk
{
    private readonly int _count;
    private readonly int _span;
    private readonly int _maxFret;
    private readonly int[] _grounds;
    private readonly int[] _open;
    private readonly float[,] _clampPoints;
    private int _lowest;

    public SpaceWalk(Setup setup, FrettingSpace space)
    {
        (_count, _span, _maxFret) = (setup.StringCount, space.Span, space.MaxFret.Number);
        _grounds = [.. Enumerable.Range(0, _count).Select(index => setup.GroundAt(index).Number)];
        _open = [.. setup.Tuning.Pitches.Select(pitch => pitch.Midi)];
        _clampPoints = new float[_count, Fret.Last + 1];
        foreach (StringNumber number in setup.Strings)
        {
            for (int fret = setup.Ground(number).Number + 1; fret <= _maxFret; fret++)
            {
                _clampPoints[number.IndexAmong(_count), fret] = (float)FingerPrices.AroundClamps(setup, number, Fret.Of(fret));
            }
        }
    }

    /// <summary>What is done with each fretting.</summary>
    public interface IVisitor
    {
        /// <summary>Called before all frettings whose lowest finger is at this fret; 0 for those with no finger.</summary>
        void Enter(int lowestFret);

        void Visit(in WalkedFretting fretting);
    }

    public void Run<TVisitor>(ref TVisitor visitor) where TVisitor : struct, IVisitor
    {
        for (_lowest = 0; _lowest <= _maxFret; _lowest++)
        {
            visitor.Enter(_lowest);
            Step(0, new WalkedFretting(0, 0, 0, Pitch.HighestMidi + 1, 0.0f), _lowest == 0, 1, ref visitor);
        }
    }

    private void Step<TVisitor>(int index, in WalkedFretting so, bool hasLowest, int place, ref TVisitor visitor)
        where TVisitor : struct, IVisitor
    {
        if (index == _count)
        {
            if (so.Classes != 0)
            {
                visitor.Visit(so);
            }

            return;
        }

        // On the last string nothing but the lowest fret will do if no string before it has a finger there.
        bool isLastChance = !hasLowest && index == _count - 1;
        int next = place * PatternTable.Radix(_span);
        if (!isLastChance)
        {
            Step(index + 1, so, hasLowest, next, ref visitor);
            int ringing = _open[index] + _grounds[index];
            Step(index + 1, so.With(index, StringStop.Ringing.Code, ringing, place, 0.0f), hasLowest, next, ref visitor);
        }

        int highest = _lowest == 0 ? 0 : Math.Min(isLastChance ? _lowest : _lowest + _span - 1, _maxFret);
        for (int fret = Math.Max(Math.Max(_lowest, 1), _grounds[index] + 1); fret <= highest; fret++)
        {
            int digit = PatternTable.FirstFretted + fret - _lowest;
            WalkedFretting with = so.With(index, StringStop.CodeOf(fret), _open[index] + fret, place * digit, _clampPoints[index, fret]);
            Step(index + 1, with, hasLowest || fret == _lowest, next, ref visitor);
        }
    }
}
