using System.Text.Json;
using Clampwise.Practice;
using Clampwise.Theory;
using Microsoft.Win32.SafeHandles;

namespace Clampwise.Storage;

/// <summary>
/// Where each entry of a journal lies, in the order of ids. A long journal is read in this order without holding all of it at once:
/// two hundred thousand entries that live on together cost more in collecting garbage than all the rest.
/// </summary>
internal sealed class JournalIndex
{
    private readonly string _path;
    private readonly Place[] _places;

    private JournalIndex(string path, Place[] places, IReadOnlyList<int> badLines) => (_path, _places, BadLines) = (path, places, badLines);

    /// <summary>The numbers of the lines that are damaged, counted from 1.</summary>
    public IReadOnlyList<int> BadLines { get; }

    /// <summary>All ids.</summary>
    public HashSet<EntryId> Ids => [.. _places.Select(place => place.Id)];

    /// <summary>Looks through the first so many bytes of a file, which are whole lines.</summary>
    public static JournalIndex Of(string path, long length)
    {
        var places = new List<Place>();
        var bad = new List<int>();
        if (length > 0)
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
            var lines = new LineReader(new PartStream(stream, length));
            for (int number = 1; lines.Next() is { } line; number++)
            {
                if (JournalLine.IsSound(line.Span) && IdOf(line.Span) is { } id)
                {
                    places.Add(new Place(id, lines.Start, line.Length));
                }
                else if (line.Length > 0)
                {
                    bad.Add(number);
                }
            }
        }

        Place[] sorted = [.. places];
        sorted.AsSpan().Sort((one, other) => one.Id.CompareTo(other.Id) is not 0 and var order ? order : one.Offset.CompareTo(other.Offset));
        return new JournalIndex(path, sorted, bad);
    }

    /// <summary>The entries in the order of their ids, each id once.</summary>
    public IEnumerable<LogEntry> Read()
    {
        if (_places.Length == 0)
        {
            yield break;
        }

        using SafeFileHandle file = File.OpenHandle(_path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, FileOptions.RandomAccess);
        var reader = new EntryReader();
        LogEntry? last = null;
        foreach (Place place in _places)
        {
            if (!Decode(file, place, reader).TryGet(out LogEntry? entry, out _))
            {
                continue;
            }

            if (last is not null && last.Id != entry.Id)
            {
                yield return last;
                last = null;
            }

            last = last is null || EntryUnion.Replaces(entry, last) ? entry : last;
        }

        if (last is not null)
        {
            yield return last;
        }
    }

    private static Result<LogEntry> Decode(SafeFileHandle file, Place place, EntryReader reader)
    {
        var line = new byte[place.Length];
        RandomAccess.Read(file, line, place.Offset);
        return JournalLine.Decode(line, reader);
    }

    private static EntryId? IdOf(ReadOnlySpan<byte> line)
    {
        var json = new Utf8JsonReader(line);
        try
        {
            while (json.Read())
            {
                if (json.TokenType == JsonTokenType.PropertyName && json.CurrentDepth == 1 && json.ValueTextEquals(Fields.Id.Encoded.EncodedUtf8Bytes))
                {
                    return json.Read() && json.TokenType == JsonTokenType.String && EntryId.Parse(json.GetString()!).TryGet(out EntryId id, out _) ? id : null;
                }
            }
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException)
        {
        }

        return null;
    }

    private readonly record struct Place(EntryId Id, long Offset, int Length);
}
