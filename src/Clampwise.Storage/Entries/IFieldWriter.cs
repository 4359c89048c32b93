using System.Collections.Immutable;
using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>A form in which log entries are written down. The order of calls is the order of fields.</summary>
internal interface IFieldWriter
{
    void Id(Field field, Guid value);

    void Text(Field field, string value);

    /// <summary>One of a fixed list of words.</summary>
    void Code(Field field, string value);

    void Whole(Field field, int value);

    void Real(Field field, double value);

    void Flag(Field field, bool value);

    void Time(Field field, DateTimeOffset value);

    void Span(Field field, TimeSpan value);

    void Day(Field field, PracticeDay value);

    void Reals(Field field, ImmutableArray<double> values);
}
