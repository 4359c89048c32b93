using System.Runtime.InteropServices;

namespace Clampwise.Streams;

/// <summary>
/// Standard output or standard error by their numbers (POSIX.1-2017, write). The runtime's own stream says nothing when whoever reads a
/// pipe has gone, so that a long command would go on for nobody.
/// </summary>
internal sealed partial class DescriptorStream(int descriptor, bool mayFail) : Stream
{
    private const int Interrupted = 4;
    private const int BrokenPipe = 32;

    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        while (buffer.Length > 0)
        {
            nint written = WriteTo(descriptor, in MemoryMarshal.GetReference(buffer), (nuint)buffer.Length);
            int error = written < 0 ? Marshal.GetLastPInvokeError() : 0;
            if (error == 0)
            {
                buffer = buffer[(int)written..];
            }
            else if (error != Interrupted)
            {
                if (mayFail)
                {
                    return;
                }

                throw error == BrokenPipe ? new ReaderGoneException() : new IOException($"what is printed could not be written: {Marshal.GetPInvokeErrorMessage(error)}");
            }
        }
    }

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    private static partial nint WriteTo(int descriptor, in byte bytes, nuint count);
}
