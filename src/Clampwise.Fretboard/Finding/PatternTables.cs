namespace Clampwise.Fretboard;

/// <summary>
/// The pattern tables of a setup: positions at which grounds and clamps look alike from the lowest fretted fret share one.
/// </summary>
/// <param name="setup">The setup.</param>
/// <param name="span">The span of frets.</param>
/// <param name="usesThumb">True if the thumb may stop the lowest string.</param>
/// <param name="clampsBlock">True if a barre cannot lie across a clamp at its own fret, as for a hand; false to count by published rules.</param>
internal sealed class PatternTables(Setup setup, int span, bool usesThumb, bool clampsBlock)
{
    private readonly Dictionary<string, PatternTable> _tables = [];

    /// <summary>The table for frettings whose lowest finger is at this fret.</summary>
    public PatternTable At(int lowestFret)
    {
        int[] offsets =
        [
            .. Enumerable.Range(0, setup.StringCount)
                .Select(index => PatternTable.GroundOffset(setup.GroundAt(index).Number, lowestFret, span)),
        ];
        ClampBars clamps = clampsBlock ? ClampBars.Of(setup, lowestFret, span) : ClampBars.None;
        string key = $"{string.Join(',', offsets)};{clamps}";
        if (!_tables.TryGetValue(key, out PatternTable? table))
        {
            table = new PatternTable(offsets, clamps, span, usesThumb);
            _tables.Add(key, table);
        }

        return table;
    }
}
