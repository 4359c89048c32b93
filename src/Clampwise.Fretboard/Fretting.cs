using System.Collections.Immutable;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>
/// For every string, lowest first: muted, ringing, or a finger at a fret. Packed into one word, so that copying and comparing are free.
/// </summary>
public readonly record struct Fretting
{
    private const int BitsEach = 8;
    private readonly ulong _codes;
    private readonly byte _count;

    private Fretting(ulong codes, int count) => (_codes, _count) = (codes, (byte)count);

    /// <summary>How many strings it is for; 0 only for the default value, which is no fretting.</summary>
    public int StringCount => _count;

    /// <summary>The stop of the string at a place in the list from the lowest string (0) to the highest.</summary>
    public StringStop this[int index] => index >= 0 && index < _count
        ? StringStop.FromCode((int)((_codes >> (index * BitsEach)) & 0xFF))
        : throw new ArgumentOutOfRangeException(nameof(index), index, $"The fretting has {_count} strings.");

    /// <summary>The stop of a string.</summary>
    public StringStop this[StringNumber number] => this[number.IndexAmong(_count)];

    /// <summary>All stops, lowest string first.</summary>
    public ImmutableArray<StringStop> Stops
    {
        get
        {
            Fretting self = this;
            return [.. Enumerable.Range(0, _count).Select(index => self[index])];
        }
    }

    /// <summary>A fretting of the given stops, lowest string first. Throws for more than 8 strings.</summary>
    public static Fretting Of(ReadOnlySpan<StringStop> stops)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stops.Length, StringNumber.Most);
        ulong codes = 0;
        for (int index = 0; index < stops.Length; index++)
        {
            codes |= (ulong)stops[index].Code << (index * BitsEach);
        }

        return new Fretting(codes, stops.Length);
    }

    /// <summary>All strings left to ring.</summary>
    public static Fretting AllRinging(int stringCount)
    {
        Span<StringStop> stops = stackalloc StringStop[stringCount];
        stops.Fill(StringStop.Ringing);
        return Of(stops);
    }

    /// <summary>The same fretting with one string changed.</summary>
    public Fretting With(StringNumber number, StringStop stop)
    {
        int shift = number.IndexAmong(_count) * BitsEach;
        return new Fretting((_codes & ~(0xFFUL << shift)) | ((ulong)stop.Code << shift), _count);
    }

    /// <summary>Reads fretting text, counted from the nut or, after <c>^</c>, from the home clamp of the setup.</summary>
    public static Result<Fretting> Parse(string text, Setup setup) => FrettingText.Parse(text, setup);

    /// <summary>Fretting text counted from the nut: <c>x04600</c>, or spaced if a fret has two digits.</summary>
    public override string ToString() => FrettingText.Print(this);

    /// <summary>Fretting text counted from the home clamp: <c>^ x 0 2 4 0 0</c>.</summary>
    public string ToHomeText(Setup setup) => FrettingText.PrintFromHome(this, setup);
}
