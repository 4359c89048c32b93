using System.Buffers.Binary;
using System.Text;
using Clampwise.Theory;

namespace Clampwise.Sound.SoundFonts;

/// <summary>A run of bytes in a file.</summary>
internal readonly record struct Extent(long Start, long Length);

/// <summary>
/// Where a SoundFont file keeps its parts (SoundFont Technical Specification 2.04, section 4 and 5): the tables, and the pool of samples,
/// which is not read here however large it is.
/// </summary>
/// <param name="Tables">The contents of the list <c>pdta</c>, after its name.</param>
/// <param name="Samples">The chunk <c>smpl</c>: 16-bit samples.</param>
/// <param name="LowBytes">The chunk <c>sm24</c>: a further low byte for each sample; empty without one.</param>
internal sealed record RiffMap(Extent Tables, Extent Samples, Extent LowBytes)
{
    private const int HeaderBytes = 8;
    private const int NameBytes = 4;

    /// <summary>Reads the map, or says what is wrong with the file.</summary>
    public static Result<RiffMap> Read(Stream file)
    {
        if (!TryHeader(file, 0, out string id, out long size) || id != "RIFF" || ReadName(file, HeaderBytes) != "sfbk")
        {
            return SoundFontWords.NotASoundFont;
        }

        if (HeaderBytes + size > file.Length)
        {
            return SoundFontWords.CutShort(HeaderBytes + size - file.Length);
        }

        var lists = new Dictionary<string, Extent>();
        foreach ((string chunk, Extent extent) in Chunks(file, new Extent(HeaderBytes + NameBytes, size - NameBytes)))
        {
            if (chunk == "LIST" && extent.Length >= NameBytes)
            {
                lists.TryAdd(ReadName(file, extent.Start), new Extent(extent.Start + NameBytes, extent.Length - NameBytes));
            }
        }

        return !lists.TryGetValue("pdta", out Extent tables) ? SoundFontWords.PartMissing("pdta, the list of presets")
            : !lists.TryGetValue("sdta", out Extent data) ? SoundFontWords.PartMissing("sdta, the samples")
            : OfParts(tables, Chunks(file, data).DistinctBy(chunk => chunk.Id).ToDictionary(chunk => chunk.Id, chunk => chunk.Extent));
    }

    /// <summary>The chunks within a run of bytes; stops before one that would reach beyond it.</summary>
    public static IEnumerable<(string Id, Extent Extent)> Chunks(Stream file, Extent within)
    {
        long end = within.Start + within.Length;
        long at = within.Start;
        while (at + HeaderBytes <= end && TryHeader(file, at, out string id, out long size) && at + HeaderBytes + size <= end)
        {
            yield return (id, new Extent(at + HeaderBytes, size));
            // Chunks begin at even places.
            at += HeaderBytes + size + (size & 1);
        }
    }

    private static Result<RiffMap> OfParts(Extent tables, Dictionary<string, Extent> parts) =>
        !parts.TryGetValue("smpl", out Extent samples) || samples.Length == 0
            ? SoundFontWords.PartMissing("smpl, the samples")
            : new RiffMap(tables, samples, parts.TryGetValue("sm24", out Extent low) && low.Length >= samples.Length / 2 ? low : default);

    private static bool TryHeader(Stream file, long at, out string id, out long size)
    {
        Span<byte> header = stackalloc byte[HeaderBytes];
        file.Position = at;
        bool isWhole = file.ReadAtLeast(header, HeaderBytes, throwOnEndOfStream: false) == HeaderBytes;
        id = isWhole ? Encoding.Latin1.GetString(header[..NameBytes]) : "";
        size = isWhole ? BinaryPrimitives.ReadUInt32LittleEndian(header[NameBytes..]) : 0;
        return isWhole;
    }

    private static string ReadName(Stream file, long at)
    {
        Span<byte> name = stackalloc byte[NameBytes];
        file.Position = at;
        return file.ReadAtLeast(name, NameBytes, throwOnEndOfStream: false) == NameBytes ? Encoding.Latin1.GetString(name) : "";
    }
}
