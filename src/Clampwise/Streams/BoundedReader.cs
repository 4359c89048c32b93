using System.Text;

namespace Clampwise.Streams;

/// <summary>Reads lines of a bounded length, so that an input without line ends does not fill the memory.</summary>
internal sealed class BoundedReader(TextReader from) : TextReader
{
    /// <summary>Characters that a line may have.</summary>
    public const int Most = 1 << 16;

    /// <inheritdoc/>
    public override int Peek() => from.Peek();

    /// <inheritdoc/>
    public override int Read() => from.Read();

    /// <inheritdoc/>
    public override string? ReadLine()
    {
        var line = new StringBuilder();
        for (int sign = from.Read(); sign != '\n'; sign = from.Read())
        {
            if (sign < 0)
            {
                return line.Length > 0 ? line.ToString() : null;
            }

            if (line.Length == Most)
            {
                throw new LineTooLongException(Most);
            }

            line.Append((char)sign);
        }

        return line.Length > 0 && line[^1] == '\r' ? line.ToString(0, line.Length - 1) : line.ToString();
    }
}
