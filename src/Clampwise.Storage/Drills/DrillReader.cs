using System.Collections.Immutable;
using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Theory;
using Tomlyn.Syntax;

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
        var faults = new List<FileFault>();
        DocumentSyntax document = TomlDocument.Parse(text, file);
        foreach (DiagnosticMessage message in document.Diagnostics)
        {
            faults.Add(new FileFault(file, message.Span.Start.Line + 1, message.Span.Start.Column + 1, message.Message));
        }

        if (faults.Count > 0)
        {
            return new DrillReading(null, [.. faults]);
        }

        DrillSheet? sheet = ReadDocument(document, file, origin, faults);
        return faults.Count == 0 ? new DrillReading(sheet, []) : new DrillReading(null, [.. faults]);
    }

    private static DrillSheet? ReadDocument(DocumentSyntax document, string file, DrillOrigin origin, List<FileFault> faults)
    {
        var head = new TomlSection(file, document, document.KeyValues, s_drillKeys, faults);
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

        var drill = new Drill(id, title, setup, ReadVoicings(document, setup, file, faults), note);
        return new DrillSheet(directions is null ? drill : drill with { Directions = [.. directions.Distinct()] }, order, origin);
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

    private static ImmutableArray<DrillVoicing> ReadVoicings(DocumentSyntax document, Setup setup, string file, List<FileFault> faults)
    {
        var voicings = new List<DrillVoicing>();
        foreach (TableSyntaxBase table in document.Tables)
        {
            var section = new TomlSection(file, table, table.Items, s_voicingKeys, faults);
            string name = table.Name?.ToString().Trim() ?? "";
            if (table is not TableArraySyntax || name != DrillKeys.Voicing)
            {
                section.ReportHere(StorageWords.UnknownTable(name));
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
            faults.Add(new FileFault(file, 1, 1, StorageWords.NoVoicing.Message));
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
