using System.Collections.Immutable;
using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>The parts of a memory state one after another, little-endian. No version of its own: see <see cref="MemoryDocument"/>.</summary>
internal static class MemoryBytes
{
    public static void Write(BinaryWriter to, MemoryState state)
    {
        to.Write(state.LatestAt.UtcTicks);
        to.Write(state.AttemptCount);
        WriteAll(to, state.Items, WriteItem);
        WriteAll(to, state.UsualTimes, (writer, pair) =>
        {
            writer.Write((int)pair.Key);
            writer.Write(pair.Value.Weight);
            writer.Write(pair.Value.Mean);
            writer.Write(pair.Value.Variance);
        });
        WriteAll(to, state.Skills, (writer, pair) =>
        {
            writer.Write((int)pair.Key.Direction);
            writer.Write((int?)pair.Key.Family ?? -1);
            writer.Write(pair.Value.Rating);
            writer.Write(pair.Value.Answers);
        });
        WriteAll(to, state.Confusions, (writer, pair) =>
        {
            WriteShape(writer, pair.Key.Asked);
            WriteShape(writer, pair.Key.Taken);
            writer.Write(pair.Value.Times);
            writer.Write(pair.Value.Weight);
            writer.Write(pair.Value.Last.Number);
            writer.Write(pair.Value.Open);
            writer.Write(pair.Value.Apart);
            writer.Write((int)pair.Value.Direction);
        });
        to.Write(state.Before is not null);
        if (state.Before is { } before)
        {
            WriteShape(to, before.Item.Shape);
            to.Write((int)before.Item.Direction);
            to.Write(before.Day.Number);
            to.Write(before.IsCorrect);
        }

        WriteNumbers(to, state.Correction.Weights);
        WriteNumbers(to, state.Correction.Spread);
        to.Write(state.FirstAnswers.Weight);
        to.Write(state.FirstAnswers.Right);
        to.Write(state.UsualRound.Weight);
        to.Write(state.UsualRound.Seconds);
    }

    public static MemoryState Read(BinaryReader from, MemoryState empty) => empty with
    {
        LatestAt = new DateTimeOffset(from.ReadInt64(), TimeSpan.Zero),
        AttemptCount = from.ReadInt32(),
        Items = ReadAll(from, ReadItem),
        UsualTimes = ReadAll(from, reader => KeyValuePair.Create(
            (Direction)reader.ReadInt32(), new UsualTime(reader.ReadDouble(), reader.ReadDouble(), reader.ReadDouble()))),
        Skills = ReadAll(from, reader => KeyValuePair.Create(
            new SkillKey((Direction)reader.ReadInt32(), reader.ReadInt32() is >= 0 and var family ? (ChordFamily)family : null),
            new Skill(reader.ReadDouble(), reader.ReadInt32()))),
        Confusions = ReadAll(from, reader => KeyValuePair.Create(
            new Confusion(ReadShape(reader), ReadShape(reader)),
            new ConfusionCount(reader.ReadInt32(), reader.ReadDouble(), new PracticeDay(reader.ReadInt32()))
            {
                Open = reader.ReadInt32(),
                Apart = reader.ReadInt32(),
                Direction = (Direction)reader.ReadInt32(),
            })),
        Before = from.ReadBoolean() ? new LastAnswer(new ItemKey(ReadShape(from), (Direction)from.ReadInt32()), new PracticeDay(from.ReadInt32()), from.ReadBoolean()) : null,
        Correction = Correction.Of(ReadNumbers(from), ReadNumbers(from)),
        FirstAnswers = new FirstAnswers(from.ReadDouble(), from.ReadDouble()),
        UsualRound = new UsualRound(from.ReadDouble(), from.ReadDouble()),
    };

    private static void WriteItem(BinaryWriter to, KeyValuePair<ItemKey, ItemMemory> pair)
    {
        (ItemKey key, ItemMemory item) = pair;
        WriteShape(to, key.Shape);
        to.Write((int)key.Direction);
        to.Write(item.Memory.Stability);
        to.Write(item.Memory.Difficulty);
        to.Write(item.FirstDay.Number);
        to.Write(item.LastDay.Number);
        to.Write(item.Answers);
        to.Write(item.RightAnswers);
        to.Write(item.Lapses);
        to.Write(item.Recent);
        to.Write(item.Slowness);
        to.Write((int)item.LastGrade);
        to.Write(item.FreeAnswers);
        to.Write(item.FreeDays);
        to.Write(item.LastFreeDay.Number);
        to.Write(item.WasMissedLastDay);
    }

    private static KeyValuePair<ItemKey, ItemMemory> ReadItem(BinaryReader from) => KeyValuePair.Create(
        new ItemKey(ReadShape(from), (Direction)from.ReadInt32()),
        new ItemMemory(
            new Memory(from.ReadDouble(), from.ReadDouble()),
            new PracticeDay(from.ReadInt32()),
            new PracticeDay(from.ReadInt32()),
            from.ReadInt32(),
            from.ReadInt32(),
            from.ReadInt32(),
            from.ReadByte(),
            from.ReadDouble(),
            (Grade)from.ReadInt32())
        {
            FreeAnswers = from.ReadInt32(),
            FreeDays = from.ReadInt32(),
            LastFreeDay = new PracticeDay(from.ReadInt32()),
            WasMissedLastDay = from.ReadBoolean(),
        });

    private static void WriteNumbers(BinaryWriter to, ImmutableArray<double> numbers)
    {
        to.Write(numbers.Length);
        foreach (double number in numbers)
        {
            to.Write(number);
        }
    }

    private static ImmutableArray<double> ReadNumbers(BinaryReader from) => [.. Enumerable.Range(0, from.ReadInt32()).Select(_ => from.ReadDouble())];

    private static void WriteShape(BinaryWriter to, ShapeKey shape)
    {
        to.Write(shape.Rig);
        to.Write(shape.Shape);
    }

    private static ShapeKey ReadShape(BinaryReader from) => new(from.ReadString(), from.ReadString());

    private static void WriteAll<TKey, TValue>(BinaryWriter to, ImmutableDictionary<TKey, TValue> all, Action<BinaryWriter, KeyValuePair<TKey, TValue>> write)
        where TKey : notnull
    {
        to.Write(all.Count);
        foreach (KeyValuePair<TKey, TValue> pair in all)
        {
            write(to, pair);
        }
    }

    private static ImmutableDictionary<TKey, TValue> ReadAll<TKey, TValue>(BinaryReader from, Func<BinaryReader, KeyValuePair<TKey, TValue>> read)
        where TKey : notnull
    {
        int count = from.ReadInt32();
        var all = ImmutableDictionary.CreateBuilder<TKey, TValue>();
        for (int i = 0; i < count; i++)
        {
            all.Add(read(from));
        }

        return all.ToImmutable();
    }
}
