using System.Collections.Immutable;
using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

/// <summary>Large repertoires, the same each time, made by walking through frettings.</summary>
public static class Many
{
    private static readonly string[] s_setups =
        ["standard + 2-4@2", "standard + 1-5@2", "standard + 3-5@2", "drop D + 2-5@2", "standard + full@1 + 1-3@3", "standard + 2-3@4"];

    /// <summary>So many shapes that have a name, in drills of up to twelve, spread over six setups.</summary>
    public static Repertoire Shapes(int count, ImmutableArray<Direction> directions)
    {
        int each = (count + s_setups.Length - 1) / s_setups.Length;
        return Repertoire.Of(s_setups.SelectMany((text, place) => Drills(Setup.Parse(text).Value, place, Math.Min(each, count - (place * each)), directions)));
    }

    private static IEnumerable<Drill> Drills(Setup setup, int place, int count, ImmutableArray<Direction> directions) =>
        Voicings(setup).Take(Math.Max(0, count)).Select(voicing => new DrillVoicing(voicing)).Chunk(12)
            .Select((chunk, number) => Drill.Create(DrillId.Parse($"many-{place}-{number}").Value, $"{place}/{number}", setup, [.. chunk]).Value with { Directions = directions });

    private static IEnumerable<Voicing> Voicings(Setup setup)
    {
        var random = new Random(17);
        var seen = new HashSet<Fretting>();
        while (true)
        {
            StringStop[] stops = [.. setup.Strings.Select(number => random.Next(3) == 0
                ? StringStop.At(Fret.Of(Math.Max(setup.Ground(number).Number, setup.HomeFret.Number) + random.Next(1, 5)))
                : number.Number == 6 && random.Next(2) == 0 ? StringStop.Muted : StringStop.Ringing)];
            var fretting = Fretting.Of(stops);
            if (Voicing.Create(setup, fretting).TryGet(out Voicing? voicing, out _) && voicing.Shape.First.Quality is not null && seen.Add(fretting))
            {
                yield return voicing;
            }
        }
    }
}
