using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>Reads a drill file (TOML 1.0). A file with any fault makes no drill; all its faults are reported at once.</summary>
public static class DrillReader
{
    private static readonly string[] s_drillKeys = [DrillKeys.Title, DrillKeys.Setup, DrillKeys.Order, DrillKeys.Note, DrillKeys.Directions];
    private static readonly string[] s_voicingKeys = [DrillKeys.Fretting, DrillKeys.Note, DrillKeys.Behind];

    /// <summary>Reads the text of a file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name, with or without folders; without its ending it is the drill's id.</param>
    /// <param name="origin">Where the file comes from.</param>
    public static DrillReading Read(string text, string file, DrillOrigin origin)
    {
        var toml = TomlFile.Parse(text, file);
        if (!toml.Faults.IsEmpty)
        {
            return new DrillReading(null, toml.Faults);
        }

        var faults = new List<FileFault>();
        DrillSheet? sheet = ReadDocument(toml, file, origin, faults);
        return faults.Count == 0 ? new DrillReading(sheet, []) : new DrillReading(null, [.. faults]);
    }

    private static DrillSheet? ReadDocument(TomlFile toml, string file, DrillOrigin origin, List<FileFault> faults)
    {
        var head = new TomlSection(toml, toml.Head, s_drillKeys, faults);
        string? title = head.Required(DrillKeys.Title);
        int order = head.Whole(DrillKeys.Order, 0, DrillSheet.LastOrder) ?? DrillSheet.LastOrder;
        string? note = head.Text(DrillKeys.Note);
        IReadOnlyList<Direction>? directions = head.List(DrillKeys.Directions, Directions.Parse);
        if (directions is { Count: 0 })
        {
            head.Report(DrillKeys.Directions, StorageWords.NoDirection);
        }

        if (!DrillId.Parse(Path.GetFileNameWithoutExtension(file)).TryGet(out DrillId id, out Fault? badName))
        {
            faults.Add(new FileFault(file, 1, 1, StorageWords.BadDrillFileName(badName).Message));
        }

        if (ReadSetup(head) is not { } setup || title is null)
        {
            return null;
        }

        // What could refuse it has been said of the voicing itself.
        return Drill.Create(id, title, setup, ReadVoicings(toml, setup, faults), note).TryGet(out Drill? drill, out _)
            ? new DrillSheet(directions is null ? drill : drill with { Directions = [.. directions.Distinct()] }, order, origin)
            : null;
    }

    private static Setup? ReadSetup(TomlSection head)
    {
        if (head.Required(DrillKeys.Setup) is not { } text)
        {
            return null;
        }

        if (Setup.Parse(text).TryGet(out Setup? setup, out Fault? fault))
        {
            return setup;
        }

        head.Report(DrillKeys.Setup, fault);
        return null;
    }

    private static ImmutableArray<DrillVoicing> ReadVoicings(TomlFile toml, Setup setup, List<FileFault> faults)
    {
        var voicings = new List<DrillVoicing>();
        foreach (TomlTable table in toml.Tables)
        {
            var section = new TomlSection(toml, table, s_voicingKeys, faults);
            if (!table.IsListed || table.Name != DrillKeys.Voicing)
            {
                section.ReportHere(StorageWords.UnknownTable(table.Name));
            }
            else if (ReadVoicing(section, setup) is { } voicing)
            {
                if (voicings.Any(other => other.Voicing.Fretting == voicing.Voicing.Fretting))
                {
                    section.Report(DrillKeys.Fretting, StorageWords.VoicingTwice(voicing.Voicing.Fretting.ToString()));
                }

                voicings.Add(voicing);
            }
        }

        if (voicings.Count == 0 && faults.Count == 0)
        {
            faults.Add(new FileFault(toml.Name, 1, 1, StorageWords.NoVoicing.Message));
        }

        return [.. voicings];
    }

    private static DrillVoicing? ReadVoicing(TomlSection section, Setup setup)
    {
        string? note = section.Text(DrillKeys.Note);
        bool allowBehindClamp = section.Flag(DrillKeys.Behind);
        if (section.Required(DrillKeys.Fretting) is not { } text)
        {
            return null;
        }

        if (Voicing.Parse(setup, text, allowBehindClamp).TryGet(out Voicing? voicing, out Fault? fault))
        {
            return new DrillVoicing(voicing, note);
        }

        section.Report(DrillKeys.Fretting, fault);
        return null;
    }
}
