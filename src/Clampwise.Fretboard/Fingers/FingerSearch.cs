using System.Numerics;

namespace Clampwise.Fretboard;

/// <summary>
/// Every way to stop a pattern with fingers. A higher finger never lies behind a lower one, and on one fret they go from the lowest
/// string to the highest (the usual constraint of fingering models; fingers cross only with effort). Neighbouring strings at one
/// fret can share a finger where nothing between them must sound from behind it and no clamp is in the way. Keeps its buffers, so that a
/// search allocates nothing.
/// </summary>
internal sealed class FingerSearch(int stringCount, bool usesThumb, ClampBars clamps)
{
    private const int MostFingers = 4;
    private readonly int[] _strings = new int[StringNumber.Most];
    private readonly int[] _offsets = new int[StringNumber.Most];
    private readonly FingerGroup[] _groups = new FingerGroup[StringNumber.Most];
    private readonly FingerGroup[] _placed = new FingerGroup[MostFingers + 1];
    private readonly Finger[] _fingers = new Finger[MostFingers + 1];
    private ulong _pattern;
    private int _count;
    private int _joins;

    /// <summary>What is done with each assignment that is found.</summary>
    public interface IVisitor
    {
        void Visit(ReadOnlySpan<FingerGroup> groups, ReadOnlySpan<Finger> fingers);
    }

    /// <summary>The fewest fingers that can stop the pattern, all that can be joined being joined; the thumb counts as one.</summary>
    public int FewestFingers(ulong pattern)
    {
        Load(pattern);
        return _count - BitOperations.PopCount((uint)_joins);
    }

    /// <summary>Visits every assignment; none if the hand has too few fingers.</summary>
    public void Visit<TVisitor>(ulong pattern, ref TVisitor visitor) where TVisitor : struct, IVisitor
    {
        Load(pattern);
        // All subsets of the joins, the empty one last.
        for (int joined = _joins; ; joined = (joined - 1) & _joins)
        {
            int groups = Group(joined);
            VisitGroups(groups, ref visitor);
            if (joined == 0)
            {
                return;
            }
        }
    }

    private void VisitGroups<TVisitor>(int count, ref TVisitor visitor) where TVisitor : struct, IVisitor
    {
        if (count <= MostFingers)
        {
            _groups.AsSpan(0, count).CopyTo(_placed);
            VisitFingers(count, 0, ref visitor);
        }

        int thumb = usesThumb ? Array.FindIndex(_groups, 0, count, group => group is { First: 0, Last: 0 }) : -1;
        if (thumb >= 0 && count <= MostFingers + 1)
        {
            _placed[0] = _groups[thumb];
            _fingers[0] = Finger.Thumb;
            _groups.AsSpan(0, thumb).CopyTo(_placed.AsSpan(1));
            _groups.AsSpan(thumb + 1, count - thumb - 1).CopyTo(_placed.AsSpan(thumb + 1));
            VisitFingers(count - 1, 1, ref visitor);
        }
    }

    // Every rising choice of fingers, as the bits of a number.
    private void VisitFingers<TVisitor>(int count, int start, ref TVisitor visitor) where TVisitor : struct, IVisitor
    {
        for (int chosen = 0; chosen < 1 << MostFingers; chosen++)
        {
            if (BitOperations.PopCount((uint)chosen) != count)
            {
                continue;
            }

            int place = start;
            for (int rest = chosen; rest != 0; rest &= rest - 1)
            {
                _fingers[place++] = (Finger)(BitOperations.TrailingZeroCount(rest) + 1);
            }

            visitor.Visit(_placed.AsSpan(0, place), _fingers.AsSpan(0, place));
        }
    }

    // Fretted strings by fret, then from the lowest string; a join bit says that a string can share the finger of the one before it.
    private void Load(ulong pattern)
    {
        _pattern = pattern;
        _count = 0;
        for (int index = 0; index < stringCount; index++)
        {
            byte stop = StopPattern.At(pattern, index);
            if (StopPattern.IsFretted(stop))
            {
                Insert(index, StopPattern.Offset(stop));
            }
        }

        _joins = 0;
        for (int i = 1; i < _count; i++)
        {
            _joins |= _offsets[i] == _offsets[i - 1] && IsClear(_strings[i - 1], _strings[i], _offsets[i]) ? 1 << i : 0;
        }
    }

    private void Insert(int index, int offset)
    {
        int place = _count++;
        for (; place > 0 && _offsets[place - 1] > offset; place--)
        {
            (_offsets[place], _strings[place]) = (_offsets[place - 1], _strings[place - 1]);
        }

        (_offsets[place], _strings[place]) = (offset, index);
    }

    private bool IsClear(int from, int to, int offset)
    {
        if (!clamps.LetAcross(from, to, offset))
        {
            return false;
        }

        for (int index = from + 1; index < to; index++)
        {
            if (!StopPattern.LetsAcross(StopPattern.At(_pattern, index), offset))
            {
                return false;
            }
        }

        return true;
    }

    private int Group(int joined)
    {
        int count = 0;
        for (int i = 0; i < _count; i++)
        {
            bool joins = ((joined >> i) & 1) == 1;
            int bit = 1 << _strings[i];
            _groups[joins ? count - 1 : count++] = joins
                ? _groups[count - 1] with { Last = _strings[i], Bits = _groups[count - 1].Bits | bit }
                : new FingerGroup(_offsets[i], _strings[i], _strings[i], bit, 0);
        }

        for (int i = 0; i < count; i++)
        {
            FingerGroup group = _groups[i];
            int edges = RingsAt(group.First - 1, group.Offset) + RingsAt(group.Last + 1, group.Offset);
            _groups[i] = group.IsBarre ? group with { Edges = edges } : group;
        }

        return count;
    }

    private int RingsAt(int index, int offset)
    {
        byte stop = index >= 0 && index < stringCount ? StopPattern.At(_pattern, index) : StopPattern.Muted;
        return StopPattern.IsRinging(stop) && !StopPattern.LetsAcross(stop, offset) ? 1 : 0;
    }
}
