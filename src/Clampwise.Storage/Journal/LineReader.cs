namespace Clampwise.Storage;

/// <summary>
/// Cuts a stream into lines that end in a line feed, each without it. The memory handed out is good until the next line is asked for. A
/// line that is too long is handed out as its beginning, so that no file needs more room than one line.
/// </summary>
internal sealed class LineReader(Stream stream)
{
    private const int Slack = 1 << 16;
    private byte[] _buffer = new byte[Slack];
    private int _start;
    private int _end;
    private long _before;
    private bool _isAtEnd;

    /// <summary>Where in the stream the line begins that was handed out last.</summary>
    public long Start { get; private set; }

    /// <summary>True if the line that was handed out last is only the beginning of one longer than <see cref="JournalLine.Most"/>.</summary>
    public bool IsCut { get; private set; }

    /// <summary>The next line; null at the end of the stream. What follows the last line feed counts as a line if there is any.</summary>
    public ReadOnlyMemory<byte>? Next()
    {
        if (IsCut)
        {
            SkipRest();
        }

        Start = _before + _start;
        int searched = _start;
        while (true)
        {
            int length = _buffer.AsSpan(searched, _end - searched).IndexOf((byte)'\n');
            if (length >= 0 && searched + length - _start <= JournalLine.Most)
            {
                return Take(searched + length, skip: 1);
            }

            searched = _end;
            if (_end - _start > JournalLine.Most)
            {
                IsCut = true;
                return Take(_start + JournalLine.Most, skip: 0);
            }

            if (_isAtEnd)
            {
                // Spelled out, for a bare null would turn into an empty line by way of an array.
                return _end > _start ? Take(_end, skip: 0) : default(ReadOnlyMemory<byte>?);
            }

            searched -= Fill();
        }
    }

    private void SkipRest()
    {
        IsCut = false;
        while (true)
        {
            int length = _buffer.AsSpan(_start, _end - _start).IndexOf((byte)'\n');
            if (length >= 0 || _isAtEnd)
            {
                _start = length >= 0 ? _start + length + 1 : _end;
                return;
            }

            _start = _end;
            Fill();
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
        _before += moved;
        _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
        (_start, _end) = (0, _end - _start);
        if (_end == _buffer.Length)
        {
            Array.Resize(ref _buffer, Math.Min(_buffer.Length * 2, JournalLine.Most + Slack));
        }

        int read = stream.Read(_buffer, _end, _buffer.Length - _end);
        _isAtEnd = read == 0;
        _end += read;
        return moved;
    }
}
