using System.Text;

namespace Clampwise.Sound.Tests;

/// <summary>Writes a small SoundFont with one looped sine, part by part as the SoundFont Technical Specification 2.04 lays them out.</summary>
internal static class SmallSoundFont
{
    public const int Rate = 44_100;
    private const int Frames = 8_820;
    private const int LoopStart = 2_205;

    /// <summary>A font with presets 0:0 'Test Piano' and 0:25 'Test Guitar', both the same sine at A4 that is out by some cents.</summary>
    public static byte[] Bytes(double cents = 0.0, int padding = 0, ushort sampleModes = 1)
    {
        // 21 whole cycles fit the loop when in tune: 2100 frames each second turn make 440 Hz.
        double hertz = 440.0 * Math.Pow(2.0, cents / 1200.0);
        int loopEnd = LoopStart + (int)Math.Round(60.0 * Rate / hertz);
        short[] wave = [.. Enumerable.Range(0, Frames + padding).Select(i => (short)(12_000 * Math.Sin(2.0 * Math.PI * i * 60.0 / (loopEnd - LoopStart))))];
        byte[] tables =
        [
            .. Chunk("phdr", [.. Preset("Test Piano", 0, 0), .. Preset("Test Guitar", 25, 1), .. Preset("EOP", 0, 2)]),
            .. Chunk("pbag", [.. Words(0, 0), .. Words(1, 0), .. Words(2, 0)]),
            .. Chunk("pmod", new byte[10]),
            .. Chunk("pgen", [.. Words(41, 0), .. Words(41, 0), .. Words(0, 0)]),
            .. Chunk("inst", [.. Instrument("Sine", 0), .. Instrument("EOI", 1)]),
            .. Chunk("ibag", [.. Words(0, 0), .. Words(4, 0)]),
            .. Chunk("imod", new byte[10]),
            .. Chunk("igen", [.. Words(54, sampleModes), .. Words(38, unchecked((ushort)-2400)), .. Words(58, 69), .. Words(53, 0), .. Words(0, 0)]),
            .. Chunk("shdr", [.. Sample("Sine", 0, Frames, LoopStart, loopEnd), .. Sample("EOS", 0, 0, 0, 0)]),
        ];
        byte[] samples = [.. wave.SelectMany(BitConverter.GetBytes)];
        return Chunk("RIFF",
        [
            .. "sfbk"u8,
            .. Chunk("LIST", [.. "INFO"u8, .. Chunk("ifil", [2, 0, 4, 0]), .. Chunk("INAM", "Small\0"u8.ToArray())]),
            .. Chunk("LIST", [.. "sdta"u8, .. Chunk("smpl", samples)]),
            .. Chunk("LIST", [.. "pdta"u8, .. tables]),
        ]);
    }

    /// <summary>Writes the font with its pool of samples grown by so many bytes, which take no room on most disks, and gives its path.</summary>
    public static string LargeFile(int extraBytes)
    {
        byte[] small = Bytes();
        int pool = Encoding.Latin1.GetString(small).IndexOf("smpl", StringComparison.Ordinal);
        int size = BitConverter.ToInt32(small, pool + 4);
        foreach (int at in new[] { 4, pool - 8, pool + 4 })
        {
            BitConverter.GetBytes(BitConverter.ToInt32(small, at) + extraBytes).CopyTo(small, at);
        }

        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".sf2");
        using FileStream file = System.IO.File.Create(path);
        file.Write(small.AsSpan(0, pool + 8 + size));
        file.Seek(extraBytes, SeekOrigin.Current);
        file.Write(small.AsSpan(pool + 8 + size));
        return path;
    }

    /// <summary>Writes a font to a file of its own, which the caller deletes.</summary>
    public static string File(byte[] bytes)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".sf2");
        System.IO.File.WriteAllBytes(path, bytes);
        return path;
    }

    private static byte[] Preset(string name, ushort number, ushort bag) => [.. Name(name), .. Words(number, 0, bag), .. new byte[12]];

    private static byte[] Instrument(string name, ushort bag) => [.. Name(name), .. Words(bag)];

    private static byte[] Sample(string name, uint start, uint end, int loopStart, int loopEnd) =>
    [
        .. Name(name), .. BitConverter.GetBytes(start), .. BitConverter.GetBytes(end), .. BitConverter.GetBytes(loopStart), .. BitConverter.GetBytes(loopEnd),
        .. BitConverter.GetBytes(Rate), 69, 0, .. Words(0, 1),
    ];

    private static byte[] Name(string name) => Encoding.ASCII.GetBytes(name.PadRight(20, '\0'));

    private static byte[] Words(params ushort[] words) => [.. words.SelectMany(BitConverter.GetBytes)];

    private static byte[] Chunk(string id, byte[] content) =>
        [.. Encoding.ASCII.GetBytes(id), .. BitConverter.GetBytes(content.Length), .. content, .. new byte[content.Length & 1]];
}
