using System.Collections.Immutable;

namespace Clampwise.Fretboard;

/// <summary>Two setups side by side, string by string from the highest side that both have.</summary>
public sealed class SetupComparison
{
    private SetupComparison(Setup first, Setup second)
    {
        First = SetupDescription.Of(first);
        Second = SetupDescription.Of(second);
        Strings =
        [
            .. first.Strings
                .Where(number => number.Number <= second.StringCount)
                .Select(number => StringComparison(first, second, number)),
        ];
    }

    /// <summary>The setup that is compared.</summary>
    public SetupDescription First { get; }

    /// <summary>The setup that it is compared with.</summary>
    public SetupDescription Second { get; }

    /// <summary>The strings that both have, the lowest first.</summary>
    public ImmutableArray<OpenStringChange> Strings { get; }

    /// <summary>Compares two setups.</summary>
    public static SetupComparison Of(Setup first, Setup second) => new(first, second);

    /// <summary>How far the second lies above the first, if their open strings have the same intervals; else null.</summary>
    public int? Transposition =>
        First.Setup.StringCount == Second.Setup.StringCount && Strings.Select(change => change.SemitonesUp).Distinct().Count() == 1
            ? Strings[0].SemitonesUp
            : null;

    /// <summary>The comparison, one line a fact.</summary>
    public IEnumerable<string> Lines
    {
        get
        {
            yield return $"{First.Setup}: {First.Spelling}; {First.Resemblance}";
            yield return $"{Second.Setup}: {Second.Spelling}; {Second.Resemblance}";
            if (Transposition is { } up)
            {
                yield return $"the open strings are the same{(up == 0 ? "" : $", {Spoken.Semitones(up)} in the second")}";
                yield break;
            }

            foreach (OpenStringChange change in Strings.Where(change => change.SemitonesUp != 0 || change.WasHeld != change.IsHeld))
            {
                yield return change.ToString();
            }
        }
    }

    private static OpenStringChange StringComparison(Setup first, Setup second, StringNumber number) =>
        new(number, first.Spell(first.GroundPitch(number)), second.Spell(second.GroundPitch(number)), first.IsHeld(number), second.IsHeld(number));
}
