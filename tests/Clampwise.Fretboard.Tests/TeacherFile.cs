namespace Clampwise.Fretboard.Tests;

/// <summary>The teacher's lists in tests/data: <c>setup TEXT</c>, then lines of <c>KEY = VALUE | VALUE</c>; <c>#</c> starts a remark.</summary>
public static class TeacherFile
{
    /// <summary>Every line with its setup, in the order of the file.</summary>
    public static IReadOnlyList<TeacherLine> Read(string name)
    {
        var lines = new List<TeacherLine>();
        string setup = "";
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", name)))
        {
            if (line.StartsWith("setup ", StringComparison.Ordinal))
            {
                setup = line["setup ".Length..];
            }
            else if (line.Length > 0 && line[0] != '#')
            {
                string[] sides = line.Split(" = ");
                lines.Add(new TeacherLine(setup, sides[0], [.. sides[1].Split(" | ")]));
            }
        }

        return lines;
    }
}
