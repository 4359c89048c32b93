namespace Clampwise.Storage;

/// <summary>Makes the next thing while the last one is used.</summary>
internal static class Ahead
{
    /// <summary>The same sequence, always one step ahead on another thread.</summary>
    public static IEnumerable<T> Of<T>(IEnumerable<T> source)
    {
        using IEnumerator<T> things = source.GetEnumerator();
        Task<bool> next = Task.Run(things.MoveNext);
        try
        {
            while (next.GetAwaiter().GetResult())
            {
                T current = things.Current;
                next = Task.Run(things.MoveNext);
                yield return current;
            }
        }
        finally
        {
            // Nothing may still run when the source is let go.
            Task.WhenAny(next).Wait();
        }
    }
}
