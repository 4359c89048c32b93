using System.Collections.Immutable;
using System.Numerics;
using Clampwise.Theory;

namespace Clampwise.Fretboard;

/// <summary>Why a voicing ranks where it does: each weight in words.</summary>
internal static class FindWords
{
    public static ImmutableArray<Price> Reasons(Voicing voicing, Fingering fingering, VoicingQuery query, RowReader rows, KeyRanks? ranks) =>
    [
        .. fingering.Prices,
        .. Ringing(voicing, rows),
        .. Position(voicing, RankingWeights.PositionFret(voicing.Setup, query)),
        .. Sound(voicing, rows),
        .. ranks is null ? Bass(voicing, QueryMatcher.AskedRoot(voicing.Setup, query)) : ranks.Reasons(KeyOf(voicing)),
        .. QueryMatcher.SoundingSymbols(voicing.Setup, query).SelectMany(symbol => Name(voicing, symbol)),
        .. Movement(voicing, query.Near),
    ];

    private static IEnumerable<Price> Ringing(Voicing voicing, RowReader rows)
    {
        int ringing = 0, sounding = 0;
        for (int index = 0; index < voicing.Strings.Length; index++)
        {
            ringing |= voicing.Strings[index].Stop.IsRinging ? 1 << index : 0;
            sounding |= voicing.Strings[index].Stop.IsMuted ? 0 : 1 << index;
        }

        int count = BitOperations.PopCount((uint)ringing);
        if (count > 0)
        {
            yield return new Price($"{Spoken.Count(count, "string")} {(count == 1 ? "rings" : "ring")}", count * RankingWeights.Ringing);
        }

        int pairs = rows.RingingPairs[ringing];
        if (pairs > 0)
        {
            yield return new Price($"{Spoken.Count(pairs, "pair")} of them in unison or octaves", pairs * RankingWeights.RingingPair);
        }

        int muted = voicing.Strings.Length - BitOperations.PopCount((uint)sounding);
        if (muted > 0)
        {
            yield return new Price($"{Spoken.Count(muted, "string")} muted", rows.MutedPoints[sounding]);
        }
    }

    private static IEnumerable<Price> Bass(Voicing voicing, PitchClass? askedRoot)
    {
        PitchClass? root = askedRoot ?? (voicing.Sounding.Readings.IsEmpty ? null : voicing.Sounding.Readings[0].Symbol.Root.Class);
        if (root is { } known && voicing.Pitches.Min().Class == known)
        {
            yield return new Price("root in the bass", RankingWeights.RootInBass);
        }
    }

    private static int KeyOf(Voicing voicing) => PackedVoicing.KeyOf(
        voicing.Pitches.Min().Class.Number, voicing.Pitches.Aggregate(0, (bits, pitch) => bits | (1 << pitch.Class.Number)));

    private static IEnumerable<Price> Position(Voicing voicing, int from)
    {
        Fret lowest = voicing.Fretting.Stops.Min(stop => stop.Finger) ?? Fret.Nut;
        int frets = lowest.Number - from;
        if (frets > 0)
        {
            yield return new Price($"hand at fret {lowest}", frets * RankingWeights.HandFret);
        }

        Fret highest = voicing.Fretting.Stops.Max(stop => stop.Finger) ?? Fret.Nut;
        int beyond = highest.Number - from - RankingWeights.LowerHalf;
        if (beyond > 0)
        {
            yield return new Price($"up to fret {highest}", beyond * RankingWeights.UpperFret);
        }
    }

    private static IEnumerable<Price> Sound(Voicing voicing, RowReader rows)
    {
        var packed = PackedVoicing.Of(voicing.Fretting);
        if (FamiliarGrips.Holds(packed, rows.StringCount, voicing.Setup.HomeFret.Number))
        {
            yield return new Price("a familiar grip", RankingWeights.Familiar);
        }

        (int lowest, int next) = rows.LowestTwo(packed);
        if (RankingWeights.OfBass(lowest, next) is > 0.0 and var muddy)
        {
            yield return new Price("close notes in the bass", muddy);
        }
    }

    private static IEnumerable<Price> Name(Voicing voicing, ChordSymbol symbol)
    {
        int classes = voicing.Pitches.Aggregate(0, (bits, pitch) => bits | (1 << pitch.Class.Number));
        (DegreeSet missing, double points) = RankingWeights.OfMissing(classes, symbol);
        if (missing.Count > 0)
        {
            yield return new Price($"without {string.Join(" or ", missing.Select(VoicingWords.Say))}", points);
        }

        AcceptanceKind kind = voicing.Sounding.Accepts(symbol).Kind;
        if (kind == AcceptanceKind.WithoutThird)
        {
            yield return new Price($"called {symbol} in lessons, written {voicing.SoundingName}", RankingWeights.WithoutThird);
        }
        else if (kind != AcceptanceKind.FirstReading)
        {
            string words = kind == AcceptanceKind.AnotherReading ? "is another name of" : "fits what is called";
            yield return new Price($"{symbol} {words} {voicing.SoundingName}", RankingWeights.OfName(kind));
        }
    }

    private static IEnumerable<Price> Movement(Voicing voicing, Voicing? near)
    {
        if (near is not null)
        {
            var movement = VoiceMovement.Between(near, voicing);
            yield return new Price(movement.ToString(), movement.Total * RankingWeights.Semitone);
        }
    }
}
