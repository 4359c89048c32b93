using Clampwise.Theory;

namespace Clampwise.Storage;

internal static class ResultReading
{
    /// <summary>The value; if there is none its fault is reported and the default stands in.</summary>
    public static T? Or<T>(this Result<T> result, IFieldReader from) where T : notnull
    {
        if (!result.TryGet(out T? value, out Fault? fault))
        {
            from.Report(fault);
        }

        return value;
    }
}
