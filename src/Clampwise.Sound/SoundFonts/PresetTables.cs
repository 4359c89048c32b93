using System.Buffers.Binary;
using System.Text;
using Clampwise.Theory;
using NAudio.SoundFont;

namespace Clampwise.Sound.SoundFonts;

/// <summary>
/// The nine tables of a SoundFont, checked before the library builds objects from them: a hostile file could otherwise make it fail in
/// many ways, or fill the memory (SoundFont Technical Specification 2.04, section 7).
/// </summary>
internal static class PresetTables
{
    private const long MostBytes = 64_000_000;

    // Name, bytes of a record, the place of an index in the record, and the table that the index points into.
    private static readonly (string Name, int Record, (int At, string Into)[] Indexes)[] s_tables =
    [
        ("phdr", 38, [(24, "pbag")]),
        ("pbag", 4, [(0, "pgen"), (2, "pmod")]),
        ("pmod", 10, []),
        ("pgen", 4, []),
        ("inst", 22, [(20, "ibag")]),
        ("ibag", 4, [(0, "igen"), (2, "imod")]),
        ("imod", 10, []),
        ("igen", 4, []),
        ("shdr", 46, []),
    ];

    /// <summary>Reads the tables, or says what is wrong with them.</summary>
    public static Result<NAudio.SoundFont.SoundFont> Read(Stream file, RiffMap map)
    {
        if (map.Tables.Length > MostBytes)
        {
            return SoundFontWords.TablesTooLarge(map.Tables.Length, MostBytes);
        }

        var tables = new Dictionary<string, byte[]>();
        foreach ((string id, Extent extent) in RiffMap.Chunks(file, map.Tables).ToArray())
        {
            tables.TryAdd(id, ReadBytes(file, extent));
        }

        return FirstFault(tables) is { } fault ? fault : Build(tables);
    }

    private static byte[] ReadBytes(Stream file, Extent extent)
    {
        var bytes = new byte[extent.Length];
        file.Position = extent.Start;
        file.ReadExactly(bytes);
        return bytes;
    }

    private static Fault? FirstFault(Dictionary<string, byte[]> tables)
    {
        foreach ((string name, int record, _) in s_tables)
        {
            if (!tables.TryGetValue(name, out byte[]? bytes))
            {
                return SoundFontWords.PartMissing(name);
            }

            if (bytes.Length % record != 0 || bytes.Length == 0)
            {
                return SoundFontWords.TableOfWrongSize(name, bytes.Length, record);
            }
        }

        return s_tables.SelectMany(table => table.Indexes.Select(index => IndexFault(table.Name, table.Record, index.At, index.Into, tables)))
            .Append(ReferenceFault(tables, "pgen", GeneratorEnum.Instrument, "inst"))
            .Append(ReferenceFault(tables, "igen", GeneratorEnum.SampleID, "shdr"))
            .FirstOrDefault(fault => fault is not null);
    }

    // Indexes never go down, and end within the table that they point into.
    private static Fault? IndexFault(string name, int record, int at, string into, Dictionary<string, byte[]> tables)
    {
        byte[] bytes = tables[name];
        int count = tables[into].Length / s_tables.First(table => table.Name == into).Record;
        int before = 0;
        for (int i = 0; i < bytes.Length / record; i++)
        {
            int index = BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan((i * record) + at));
            if (index < before || index > count)
            {
                return SoundFontWords.TablePointsNowhere(name, i);
            }

            before = index;
        }

        return null;
    }

    // The last record of the table pointed into only marks its end.
    private static Fault? ReferenceFault(Dictionary<string, byte[]> tables, string name, GeneratorEnum kind, string into)
    {
        byte[] bytes = tables[name];
        int count = (tables[into].Length / s_tables.First(table => table.Name == into).Record) - 1;
        for (int i = 0; i < bytes.Length / 4; i++)
        {
            ReadOnlySpan<byte> generator = bytes.AsSpan(4 * i, 4);
            if (BinaryPrimitives.ReadUInt16LittleEndian(generator) == (int)kind && BinaryPrimitives.ReadUInt16LittleEndian(generator[2..]) >= count)
            {
                return SoundFontWords.TablePointsNowhere(name, i);
            }
        }

        return null;
    }

    // A small SoundFont with the same tables and no samples, which the library reads from memory.
    private static Result<NAudio.SoundFont.SoundFont> Build(Dictionary<string, byte[]> tables)
    {
        byte[] info = [.. Chunk("ifil", [2, 0, 4, 0]), .. Chunk("isng", "EMU8000\0"u8.ToArray()), .. Chunk("INAM", "tables\0\0"u8.ToArray())];
        byte[] body =
        [
            .. "sfbk"u8,
            .. Chunk("LIST", [.. "INFO"u8, .. info]),
            .. Chunk("LIST", [.. "sdta"u8, .. Chunk("smpl", [])]),
            .. Chunk("LIST", [.. "pdta"u8, .. s_tables.SelectMany(table => Chunk(table.Name, tables[table.Name]))]),
        ];
        try
        {
            return new NAudio.SoundFont.SoundFont(new MemoryStream(Chunk("RIFF", body)));
        }
        catch (Exception problem) when (problem is InvalidDataException or EndOfStreamException or ArgumentException or IndexOutOfRangeException
            or InvalidOperationException or NullReferenceException or OverflowException)
        {
            return SoundFontWords.Damaged(problem.Message);
        }
    }

    private static byte[] Chunk(string id, byte[] content)
    {
        var chunk = new byte[8 + content.Length + (content.Length & 1)];
        Encoding.Latin1.GetBytes(id, chunk);
        BinaryPrimitives.WriteUInt32LittleEndian(chunk.AsSpan(4), (uint)content.Length);
        content.CopyTo(chunk, 8);
        return chunk;
    }
}
