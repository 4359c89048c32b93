using System.Collections.Immutable;
using System.Reflection;
using System.Text;
using Clampwise.Practice;
using Clampwise.Theory;

namespace Clampwise.Storage;

/// <summary>
/// All drills at hand: those that came with the program and the player's own. An own drill with the id of a shipped one stands in
/// its place.
/// </summary>
/// <param name="Sheets">The drills in the order in which a new learner meets them.</param>
/// <param name="Faults">What was wrong in files that could not be read; their drills are left out.</param>
public sealed record DrillLibrary(ImmutableArray<DrillSheet> Sheets, ImmutableArray<Fault> Faults)
{
    private const string Ending = ".toml";
    private const string ResourceFolder = "drills/";
    private static readonly Lazy<(DrillReading, Fault?)[]> s_shipped = new(() => [.. ReadShipped()]);

    /// <summary>The drills alone, in the same order.</summary>
    public IEnumerable<Drill> Drills => Sheets.Select(sheet => sheet.Drill);

    /// <summary>The drill of an id; null if there is none.</summary>
    public Drill? Find(DrillId id) => Drills.FirstOrDefault(drill => drill.Id == id);

    /// <summary>The drills that came with the program alone.</summary>
    public static DrillLibrary Shipped => Of(s_shipped.Value);

    /// <summary>Reads the shipped drills and the player's own.</summary>
    public static DrillLibrary Load(DataFolder folder) => Of([.. s_shipped.Value, .. ReadOwn(folder)]);

    /// <summary>Writes a drill of the player's own.</summary>
    /// <returns>What stood in the way; null if all went well.</returns>
    public static Fault? Save(DataFolder folder, DrillSheet sheet, bool mayReplace = false)
    {
        string path = Path.Combine(folder.Drills, sheet.Drill.Id + Ending);
        if (!mayReplace && File.Exists(path))
        {
            return StorageWords.DrillIsThere(sheet.Drill.Id);
        }

        return Disk.WriteWhole(path, Encoding.UTF8.GetBytes(DrillWriter.Write(sheet)));
    }

    private static DrillLibrary Of(IEnumerable<(DrillReading Reading, Fault? Unreadable)> read)
    {
        var all = read.ToList();
        IEnumerable<DrillSheet> sheets = all.Where(one => one.Reading.Sheet is not null).Select(one => one.Reading.Sheet!)
            .GroupBy(sheet => sheet.Drill.Id).Select(same => same.MaxBy(sheet => sheet.Origin)!)
            .OrderBy(sheet => sheet.Order).ThenBy(sheet => sheet.Drill.Id.ToString(), StringComparer.Ordinal);
        IEnumerable<Fault> faults = all.SelectMany(one => one.Unreadable is { } fault ? [fault] : one.Reading.Faults.Select(fault => fault.ToFault()));
        return new DrillLibrary([.. sheets], [.. faults]);
    }

    private static IEnumerable<(DrillReading, Fault?)> ReadShipped()
    {
        Assembly assembly = typeof(DrillLibrary).Assembly;
        foreach (string name in assembly.GetManifestResourceNames().Where(name => name.StartsWith(ResourceFolder, StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
            yield return (DrillReader.Read(reader.ReadToEnd(), name[ResourceFolder.Length..], DrillOrigin.Shipped), null);
        }
    }

    private static IEnumerable<(DrillReading, Fault?)> ReadOwn(DataFolder folder)
    {
        if (!Directory.Exists(folder.Drills))
        {
            yield break;
        }

        foreach (string path in Directory.EnumerateFiles(folder.Drills, "*" + Ending).Order(StringComparer.Ordinal))
        {
            Result<string> text = Disk.ReadText(path);
            yield return text.IsGood
                ? (DrillReader.Read(text.Value, Path.GetFileName(path), DrillOrigin.Own), null)
                : (new DrillReading(null, []), text.Fault);
        }
    }
}
