using System.Diagnostics.CodeAnalysis;

namespace Clampwise.Theory;

/// <summary>What was wrong with an input, where, and what would be right, in one line.</summary>
/// <param name="Message">One sentence without a full stop: what was found and what would be right.</param>
/// <param name="Column">The column of the text where the fault lies, counted from 1, if a text was read.</param>
public sealed record Fault(string Message, int? Column = null)
{
    private const int LongestMessage = 400;

    /// <summary>One sentence without a full stop. Of a foreign text that it quotes, control characters show as a dot, and a very long one is cut.</summary>
    public string Message { get; init; } = Printable(Message);

    /// <summary>The same fault seen in a longer text, in which the text that was read starts after <paramref name="columns"/> characters.</summary>
    public Fault ShiftedBy(int columns) => Column is { } column ? this with { Column = column + columns } : this;

    /// <inheritdoc/>
    public override string ToString() => Column is { } column ? $"column {column}: {Message}" : Message;

    // What was typed must not steer the terminal that it is answered on.
    private static string Printable(string text)
    {
        string shown = text.Any(char.IsControl) ? string.Concat(text.Select(sign => char.IsControl(sign) ? '.' : sign)) : text;
        return shown.Length <= LongestMessage ? shown : $"{shown[..(LongestMessage / 2)]} ... {shown[^(LongestMessage / 2)..]}";
    }
}

/// <summary>Either a value or the fault that stood in its way. Bad input is an ordinary outcome, so it is not an exception.</summary>
public readonly struct Result<T> where T : notnull
{
    private readonly T? _value;
    private readonly Fault? _fault;

    private Result(T? value, Fault? fault) => (_value, _fault) = (value, fault);

    /// <summary>True if there is a value.</summary>
    public bool IsGood => _fault is null && _value is not null;

    /// <summary>The value. Throws <see cref="FormatException"/> with the fault's words if there is none.</summary>
    public T Value => IsGood ? _value! : throw new FormatException(Fault.ToString());

    /// <summary>The fault. Throws <see cref="InvalidOperationException"/> if there is a value.</summary>
    public Fault Fault => _fault ?? (_value is null ? new Fault("nothing was read") : throw new InvalidOperationException("There is no fault."));

    /// <summary>Hands over the value, or the fault.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value, [NotNullWhen(false)] out Fault? fault)
    {
        (value, fault) = IsGood ? (_value, (Fault?)null) : (default, Fault);
        return IsGood;
    }

    /// <summary>Goes on with the value if there is one.</summary>
    public Result<TNext> Then<TNext>(Func<T, Result<TNext>> next) where TNext : notnull => IsGood ? next(_value!) : Fault;

    /// <summary>Changes the value if there is one.</summary>
    public Result<TNext> Select<TNext>(Func<T, TNext> change) where TNext : notnull => IsGood ? change(_value!) : Fault;

    /// <summary>A good result.</summary>
    public static implicit operator Result<T>(T value) => new(value, null);

    /// <summary>A fault.</summary>
    public static implicit operator Result<T>(Fault fault) => new(default, fault);
}
