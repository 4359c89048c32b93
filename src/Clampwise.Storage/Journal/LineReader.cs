namespace Clampwise.Storage;

/// <summary>Cuts a stream into lines that end in a line feed, each without it. The memory handed out is good until the next line is asked for.</summary>
internal sealed class LineReader(Stream stream)
{
    private byte[] _buffer = new byte[1 << 16];
    private int _start;
    private int _end;
    private bool _isAtEnd;

    /// <summary>The next line; null at the end of the stream. What follows the last line feed counts as a line if there is any.</summary>
    public ReadOnlyMemory<byte>? Next()
    {
        int searched = _start;
        while (true)
        {
            int length = _buffer.AsSpan(searched, _end - searched).IndexOf((byte)'\n');
            if (length >= 0)
            {
                return Take(searched + length, skip: 1);
            }

            searched = _end;
            if (_isAtEnd)
            {
                // Spelled out, for a bare null would turn into an empty line by way of an array.
                return _end > _start ? Take(_end, skip: 0) : default(ReadOnlyMemory<byte>?);
            }

            searched -= Fill();
        }
    }

    private ReadOnlyMemory<byte> Take(int end, int skip)
    {
        ReadOnlyMemory<byte> line = _buffer.AsMemory(_start, end - _start);
        _start = end + skip;
        return line;
    }

    // Makes room and reads on. Returns by how much everything in the buffer has moved to the front.
    private int Fill()
    {
        int moved = _start;
        _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
        (_start, _end) = (0, _end - _start);
        if (_end == _buffer.Length)
        {
            Array.Resize(ref _buffer, _buffer.Length * 2);
        }

        int read = stream.Read(_buffer, _end, _buffer.Length - _end);
        _isAtEnd = read == 0;
        _end += read;
        return moved;
    }
}
