namespace Clampwise.Theory;

/// <summary>A place in the text of a chord symbol. Spaces count for nothing between words.</summary>
internal sealed class ChordTextReader(string text, int position)
{
    public string Text { get; } = text;

    public int Position { get; private set; } = position;

    public bool IsAtEnd => Position >= Text.Length;

    /// <summary>True at the slash that starts a bass: one without a degree (7/6) or a major mark (m/maj7) after it.</summary>
    public bool IsAtBass => Peek('/') && !IsBeforeDegree;

    private bool IsBeforeDegree => Position + 1 < Text.Length && (char.IsAsciiDigit(Text[Position + 1]) || Text[Position + 1] is 'm' or 'M');

    public bool Peek(char sign) => Position < Text.Length && Text[Position] == sign;

    public bool StartsWith(string word) => string.CompareOrdinal(Text, Position, word, 0, word.Length) == 0;

    public void SkipSpaces()
    {
        while (Peek(' '))
        {
            Position++;
        }
    }

    public void GoTo(int position) => Position = position;

    public bool TryRead(char sign)
    {
        bool isThere = Peek(sign);
        Position += isThere ? 1 : 0;
        return isThere;
    }

    /// <summary>Takes the first of the words that stands here; the longer ones must come first in the list.</summary>
    public bool TryReadAny(params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (StartsWith(word))
            {
                Position += word.Length;
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes one accidental, drawn or typed; plus and minus too where they can only mean that.</summary>
    public int ReadAccidental(bool isSignAllowed)
    {
        int accidental = IsAtEnd ? 0 : NoteName.Accidental(Text[Position]);
        if (accidental == 0 && isSignAllowed && !IsAtEnd)
        {
            accidental = Text[Position] switch { '+' => 1, '-' or '−' or '–' => -1, _ => 0 };
        }

        Position += accidental == 0 ? 0 : 1;
        return accidental;
    }

    /// <summary>Takes the longest of the numbers that stands here, or 0. Numbers with two digits must come first in the list.</summary>
    public int ReadNumber(params ReadOnlySpan<int> numbers)
    {
        foreach (int number in numbers)
        {
            if (TryReadAny(number.ToString()))
            {
                return number;
            }
        }

        return 0;
    }
}
