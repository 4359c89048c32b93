using System.Globalization;
using CsCheck;

namespace Clampwise;

/// <summary>
/// Properties over generated examples, the same ones at every run: the generator starts from a fixed seed, and the examples are
/// tried one after another. <c>CLAMPWISE_SEED=n dotnet test</c> tries others.
/// </summary>
internal static class Properties
{
    private const int Usual = 100;

    private static readonly ulong s_seed =
        ulong.TryParse(Environment.GetEnvironmentVariable("CLAMPWISE_SEED"), CultureInfo.InvariantCulture, out ulong seed) ? seed : 1;

    /// <summary>Tries the property on <paramref name="count"/> examples; what fails is made smaller by CsCheck before it is shown.</summary>
    public static void Holds<T>(this Gen<T> examples, Action<T> property, int count = Usual)
    {
        var generator = new PCG(1, s_seed);
        for (int i = 0; i < count; i++)
        {
            string seed = generator.ToString();
            T example = examples.Generate(generator, null, out _);
            try
            {
                property(example);
            }
            catch (Exception)
            {
                examples.Sample(property, seed: seed, iter: Usual);
                throw;
            }
        }
    }

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int)"/>
    public static void Holds<T>(this Gen<T> examples, Func<T, bool> property, int count = Usual) =>
        examples.Holds(example => Assert.True(property(example)), count);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int)"/>
    public static void Holds<T1, T2>(this Gen<(T1, T2)> examples, Action<T1, T2> property, int count = Usual) =>
        examples.Holds(e => property(e.Item1, e.Item2), count);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int)"/>
    public static void Holds<T1, T2>(this Gen<(T1, T2)> examples, Func<T1, T2, bool> property, int count = Usual) =>
        examples.Holds(e => Assert.True(property(e.Item1, e.Item2)), count);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int)"/>
    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> examples, Action<T1, T2, T3> property, int count = Usual) =>
        examples.Holds(e => property(e.Item1, e.Item2, e.Item3), count);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int)"/>
    public static void Holds<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> examples, Action<T1, T2, T3, T4> property, int count = Usual) =>
        examples.Holds(e => property(e.Item1, e.Item2, e.Item3, e.Item4), count);

    /// <inheritdoc cref="Holds{T}(Gen{T}, Action{T}, int)"/>
    public static void Holds<T1, T2, T3, T4, T5, T6>(
        this Gen<(T1, T2, T3, T4, T5, T6)> examples, Action<T1, T2, T3, T4, T5, T6> property, int count = Usual) =>
        examples.Holds(e => property(e.Item1, e.Item2, e.Item3, e.Item4, e.Item5, e.Item6), count);
}
