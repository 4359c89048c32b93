using System.Buffers;
using System.Buffers.Text;
using System.IO.Hashing;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// One line of the journal: a JSON object whose first member is the CRC-32 (as in ISO/IEC 13239 and gzip) of everything after it,
/// up to and with the closing brace, as eight hexadecimal digits: <c>{"crc":"0f1e2d3c","v":1,...}</c>.
/// </summary>
internal static class JournalLine
{
    /// <summary>Bytes that a line may have: every field at its bounds is far shorter.</summary>
    public const int Most = 1 << 18;

    private const int HexDigits = 8;
    private static readonly JsonWriterOptions s_options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    private static ReadOnlySpan<byte> Start => "{\"crc\":\""u8;

    private static ReadOnlySpan<byte> Middle => "\","u8;

    private static int PrefixLength => Start.Length + HexDigits + Middle.Length;

    /// <summary>The bytes of a line, with the line feed at its end.</summary>
    public static byte[] Encode(LogEntry entry)
    {
        byte[] body = Json(entry);
        var line = new byte[PrefixLength + body.Length];
        Start.CopyTo(line);
        Middle.CopyTo(line.AsSpan(Start.Length + HexDigits));
        body.AsSpan(1).CopyTo(line.AsSpan(PrefixLength));
        line[^1] = (byte)'\n';
        Crc(line.AsSpan(PrefixLength..^1)).TryFormat(line.AsSpan(Start.Length), out _, "x8");
        return line;
    }

    /// <summary>The lines of some entries, one after another.</summary>
    public static byte[] EncodeAll(IReadOnlyCollection<LogEntry> entries)
    {
        using var lines = new MemoryStream();
        foreach (LogEntry entry in entries)
        {
            lines.Write(Encode(entry));
        }

        return lines.ToArray();
    }

    /// <summary>An entry as a JSON object without a checksum.</summary>
    public static byte[] Json(LogEntry entry)
    {
        var buffer = new ArrayBufferWriter<byte>(512);
        using (var json = new Utf8JsonWriter(buffer, s_options))
        {
            json.WriteStartObject();
            EntryWriter.Write(new JsonFieldWriter(json), entry);
            json.WriteEndObject();
        }

        // The encoder leaves characters raw that turn the direction of reading; lines are shown and handed on as they are.
        return Ascii.IsValid(buffer.WrittenSpan) ? buffer.WrittenSpan.ToArray() : Encoding.UTF8.GetBytes(VisibleText.Of(Encoding.UTF8.GetString(buffer.WrittenSpan)));
    }

    /// <summary>True if the line is whole: its checksum stands and is right.</summary>
    public static bool IsSound(ReadOnlySpan<byte> line)
    {
        Span<byte> expected = stackalloc byte[HexDigits];
        return HasCrc(line) && Crc(line[PrefixLength..]).TryFormat(expected, out _, "x8") && CrcText(line).SequenceEqual(expected);
    }

    /// <summary>True if the bytes are the beginning of one line, such as the first one ever when it was not written to its end.</summary>
    public static bool IsStartOfOne(ReadOnlySpan<byte> bytes) =>
        bytes.IndexOf((byte)'\n') < 0 && (bytes.StartsWith(Start) || Start.StartsWith(bytes));

    /// <summary>The checksum as it stands in a sound line.</summary>
    public static ReadOnlySpan<byte> CrcText(ReadOnlySpan<byte> line) => line.Slice(Start.Length, HexDigits);

    /// <summary>The version that a sound line was written in; 0 if it does not say.</summary>
    public static int VersionOf(ReadOnlySpan<byte> line)
    {
        ReadOnlySpan<byte> first = line[PrefixLength..];
        return first.StartsWith("\"v\":"u8) && Utf8Parser.TryParse(first[4..], out int version, out _) ? version : 0;
    }

    /// <summary>Reads a line, without its line feed.</summary>
    /// <param name="line">The line.</param>
    /// <param name="reader">Makes the entry.</param>
    /// <param name="mayLackCrc">True if a line without a checksum is taken too, as in a file made by hand.</param>
    public static Result<LogEntry> Decode(ReadOnlyMemory<byte> line, EntryReader reader, bool mayLackCrc = false)
    {
        bool isBare = mayLackCrc && !HasCrc(line.Span);
        if (!isBare && !IsSound(line.Span))
        {
            return StorageWords.BadChecksum;
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(line);
            if (document.RootElement.ValueKind != JsonValueKind.Object)
            {
                return StorageWords.NotAnObject;
            }

            return reader.Upgrades.Bring(document.RootElement).Then(root => reader.Read(new JsonFieldReader(root)));
        }
        catch (JsonException exception)
        {
            return StorageWords.NotJson(1 + (exception.BytePositionInLine ?? 0));
        }
        // Bytes that are no UTF-8, and escapes that stand for half of a pair, come to light when a text is looked at.
        catch (InvalidOperationException)
        {
            return StorageWords.BadText;
        }
    }

    private static bool HasCrc(ReadOnlySpan<byte> line) =>
        line.Length > PrefixLength && line.StartsWith(Start) && line[(Start.Length + HexDigits)..].StartsWith(Middle);

    private static uint Crc(ReadOnlySpan<byte> bytes) => Crc32.HashToUInt32(bytes);
}
