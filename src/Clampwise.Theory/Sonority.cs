using System.Collections.Immutable;

namespace Clampwise.Theory;

/// <summary>How a set of sounding pitches reads: all sensible names, the one a guitarist would write first.</summary>
public sealed record Sonority(string Name, ImmutableArray<Reading> Readings)
{
    private static readonly (string Suffix, int[] Above)[] s_kinds =
    [
        ("", [4, 7]), ("m", [3, 7]), ("sus4", [5, 7]), ("sus2", [2, 7]), ("5", [7]), ("7", [4, 7, 10]), ("m7", [3, 7, 10]), ("maj7", [4, 7, 11]),
        ("add9", [2, 4, 7]), ("m(add9)", [2, 3, 7]), ("add4", [4, 5, 7]), ("6", [4, 7, 9]), ("m6", [3, 7, 9]), ("7sus4", [5, 7, 10]),
    ];

    /// <summary>Reads sounding pitches, lowest string first.</summary>
    public static Sonority Read(ReadOnlySpan<Pitch> pitches)
    {
        Pitch[] all = pitches.ToArray();
        if (all.Length == 0)
        {
            return new Sonority("silent", []);
        }

        PitchClass bass = all.Min().Class;
        var readings = all.Select(p => p.Class).Distinct()
            .OrderBy(root => root == bass ? 0 : 1)
            .SelectMany(root => s_kinds.Where(kind => Fits(kind.Above, root, all))
                .Select(kind => new Reading(new ChordSymbol(NoteName.Usual(root), kind.Suffix, root == bass ? null : NoteName.Usual(bass)))))
            .ToImmutableArray();
        return new Sonority(readings.Length > 0 ? readings[0].Symbol.ToString() : "no chord", readings);
    }

    private static bool Fits(int[] above, PitchClass root, Pitch[] all) =>
        all.Select(p => PitchClass.SemitonesUp(root, p.Class)).Where(s => s != 0).Distinct().Order().SequenceEqual(above);
}

/// <summary>One way to name a set of pitches.</summary>
public sealed record Reading(ChordSymbol Symbol);
