using System.Collections.Immutable;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>A form from which log entries are read. Each reading gives null if there is no such field, or if it is of another kind, which is reported.</summary>
internal interface IFieldReader
{
    /// <summary>The first thing that was wrong; null if nothing was.</summary>
    Fault? Fault { get; }

    /// <summary>Reports a fault, unless there is one already.</summary>
    void Report(Fault fault);

    Guid? Id(Field field);

    string? Text(Field field);

    string? Code(Field field);

    int? Whole(Field field);

    double? Real(Field field);

    bool? Flag(Field field);

    DateTimeOffset? Time(Field field);

    TimeSpan? Span(Field field);

    PracticeDay? Day(Field field);

    ImmutableArray<double>? Reals(Field field);
}
