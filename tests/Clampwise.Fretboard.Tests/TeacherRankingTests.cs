using Clampwise.Theory;

namespace Clampwise.Fretboard.Tests;

/// <summary>
/// How the first places of named lists compare with the hands that a teacher would give first, and with the voicings of the first
/// drills. Both lists are judgement of the trade and were written before any price that ranks was changed. A hand counts where it
/// stands itself, with just its strings; a thinning that is folded into another hand does not.
/// </summary>
public class TeacherRankingTests
{
    private const int ListLength = 5;
    private static readonly Dictionary<string, Finder> s_finders = [];

    // The figures are a floor, a little under what was reached; each rises with the ranking and none may fall.
    [Fact]
    public void One_of_the_teachers_hands_stands_in_the_first_two_places()
    {
        var cells = Cells();
        string[] misses = [.. cells.Where(cell => !cell.Places.Any(place => place < 2)).Select(cell => cell.Words)];
        AssertPart(cells.Count - misses.Length, cells.Count, 0.96, misses);
    }

    [Fact]
    public void Two_of_the_teachers_hands_stand_in_the_first_five_places()
    {
        var cells = Cells().Where(cell => !cell.IsPoor).ToList();
        string[] misses = [.. cells.Where(cell => cell.Places.Count < 2).Select(cell => cell.Words)];
        AssertPart(cells.Count - misses.Length, cells.Count, 0.82, misses);
    }

    [Fact]
    public void Most_voicings_of_the_first_drills_stand_in_the_first_five_places()
    {
        var cells = TeacherFile.Read("frozen-drill-voicings.txt").Select(line => Cell(line.Setup, line.Values[0], [line.Key])).ToList();
        string[] misses = [.. cells.Where(cell => cell.Places.Count == 0).Select(cell => cell.Words)];
        AssertPart(cells.Count - misses.Length, cells.Count, 58.0 / 66.0, misses);
    }

    [Fact]
    public void Fingers_agree_with_a_players()
    {
        var lines = TeacherFile.Read("teacher-fingerings.txt");
        string[] misses = [.. lines.Where(line => !line.Values.Contains(Fingers(line))).Select(line => $"{line.Setup}: {line.Key} = {string.Join(" | ", line.Values)}, not {Fingers(line)}")];
        AssertPart(lines.Count - misses.Length, lines.Count, 0.96, misses);
    }

    private static List<(IReadOnlyList<int> Places, bool IsPoor, string Words)> Cells() =>
        [.. TeacherFile.Read("teacher-hands.txt").Select(line => Cell(line.Setup, line.Key, line.Values))];

    private static (IReadOnlyList<int> Places, bool IsPoor, string Words) Cell(string setup, string key, IReadOnlyList<string> hands)
    {
        lock (s_finders)
        {
            if (!s_finders.TryGetValue(setup, out Finder? finder))
            {
                s_finders.Add(setup, finder = new Finder(Setup.Parse(setup).Value));
            }

            var query = new VoicingQuery { ShapeName = ChordSymbol.Parse(key.TrimEnd('?')).Value, Limit = ListLength };
            string[] found = [.. finder.FindHands(query).Value.Hands.Select(hand => Plain(finder.Setup, $"{hand.Whole.Voicing.Fretting}"))];
            int[] places = [.. hands.Select(hand => Array.IndexOf(found, Plain(finder.Setup, hand))).Where(place => place >= 0)];
            return (places, key.EndsWith('?'), $"{setup} {key} = {string.Join(" | ", hands)}; found {string.Join(" | ", found)}");
        }
    }

    private static string Plain(Setup setup, string fretting) => $"{Fretting.Parse(fretting, setup).Value}";

    private static string Fingers(TeacherLine line)
    {
        Voicing voicing = Voicing.Parse(Setup.Parse(line.Setup).Value, line.Key).Value;
        Hand hand = line.Values.Any(value => value.StartsWith('T')) ? Hand.Medium with { UsesThumb = true } : Hand.Medium;
        return string.Concat(Fingering.Of(voicing, hand).Value.ByString.Select(finger => finger == Finger.None ? "." : finger.Mark()));
    }

    private static void AssertPart(int good, int all, double least, string[] misses) =>
        Assert.True(good >= least * all, $"{good} of {all}, {(double)good / all:P1}; at least {least:P0} wanted. Not so:\n{string.Join('\n', misses)}");
}
