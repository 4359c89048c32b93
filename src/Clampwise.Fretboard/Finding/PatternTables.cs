namespace Clampwise.Fretboard;

/// <summary>The pattern tables of a setup: positions at which the grounds look alike from the lowest fretted fret share one.</summary>
internal sealed class PatternTables(Setup setup, int span, bool usesThumb)
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
        string key = string.Join(',', offsets);
        if (!_tables.TryGetValue(key, out PatternTable? table))
        {
            table = new PatternTable(offsets, span, usesThumb);
            _tables.Add(key, table);
        }

        return table;
    }
}
