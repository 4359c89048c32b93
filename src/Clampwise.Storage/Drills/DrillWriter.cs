using System.Text;
using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>Writes a drill as the text of a file that reads back as the same drill.</summary>
public static class DrillWriter
{
    /// <summary>The text.</summary>
    public static string Write(DrillSheet sheet)
    {
        Drill drill = sheet.Drill;
        var text = new StringBuilder();
        Entry(text, DrillKeys.Title, TomlText.Quote(drill.Title));
        Entry(text, DrillKeys.Setup, TomlText.Quote(drill.Setup.ToString()));
        if (sheet.Order != DrillSheet.LastOrder)
        {
            Entry(text, DrillKeys.Order, sheet.Order.ToString());
        }

        Note(text, drill.Note);
        if (!drill.Directions.SequenceEqual(Directions.All))
        {
            Entry(text, DrillKeys.Directions, $"[{string.Join(", ", drill.Directions.Select(direction => TomlText.Quote(direction.Code())))}]");
        }

        foreach (DrillVoicing voicing in drill.Voicings)
        {
            Voicing(text, voicing);
        }

        return text.ToString();
    }

    private static void Voicing(StringBuilder text, DrillVoicing voicing)
    {
        text.Append("\n[[").Append(DrillKeys.Voicing).Append("]]\n");
        Entry(text, DrillKeys.Fretting, TomlText.Quote(voicing.Voicing.Fretting.ToString()));
        if (!Fretboard.Voicing.Create(voicing.Voicing.Setup, voicing.Voicing.Fretting).IsGood)
        {
            Entry(text, DrillKeys.Behind, "true");
        }

        Note(text, voicing.Note);
    }

    private static void Note(StringBuilder text, string? note)
    {
        if (note is not null)
        {
            Entry(text, DrillKeys.Note, TomlText.Quote(note));
        }
    }

    private static void Entry(StringBuilder text, string key, string value) => text.Append(key).Append(" = ").Append(value).Append('\n');
}
