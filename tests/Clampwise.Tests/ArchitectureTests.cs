using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Clampwise.Tests;

/// <summary>Holds the house of DEVELOPERS.md: dependencies run one way, and each room takes in only what belongs there.</summary>
public class ArchitectureTests
{
    // From the lowest room up; the words after each are the rooms that it may use.
    private static readonly Dictionary<string, string[]> s_mayUse = new()
    {
        ["Clampwise.Theory"] = [],
        ["Clampwise.Fretboard"] = ["Clampwise.Theory"],
        ["Clampwise.Sound"] = ["Clampwise.Fretboard", "Clampwise.Theory"],
        ["Clampwise.Listening"] = ["Clampwise.Fretboard", "Clampwise.Theory"],
        ["Clampwise.Songs"] = ["Clampwise.Fretboard", "Clampwise.Theory"],
        ["Clampwise.Practice"] = ["Clampwise.Songs", "Clampwise.Fretboard", "Clampwise.Theory"],
        ["Clampwise.Charts"] = ["Clampwise.Practice", "Clampwise.Songs", "Clampwise.Fretboard", "Clampwise.Theory"],
        ["Clampwise.Storage"] = ["Clampwise.Practice", "Clampwise.Songs", "Clampwise.Fretboard", "Clampwise.Theory"],
        ["Clampwise.Application"] =
        [
            "Clampwise.Storage", "Clampwise.Sound", "Clampwise.Practice", "Clampwise.Songs", "Clampwise.Listening", "Clampwise.Fretboard", "Clampwise.Theory",
        ],
        ["Clampwise.Terminal"] = ["Clampwise.Charts", "Clampwise.Theory"],
        ["Clampwise"] =
        [
            "Clampwise.Terminal", "Clampwise.Application", "Clampwise.Storage", "Clampwise.Charts", "Clampwise.Practice", "Clampwise.Songs", "Clampwise.Listening", "Clampwise.Sound",
            "Clampwise.Fretboard", "Clampwise.Theory",
        ],
    };

    // The folders within the program, each a namespace of its name; the words after each are the folders that it may use.
    private static readonly Dictionary<string, string[]> s_folders = new()
    {
        ["Look"] = [],
        ["Streams"] = [],
        ["Settings"] = ["Look"],
        ["Plain"] = ["Look", "Settings"],
        ["Screens"] = ["Look", "Settings"],
        ["Commands"] = ["Look", "Streams", "Settings", "Plain", "Screens"],
    };

    private static readonly Dictionary<string, string[]> s_packages = new()
    {
        ["Clampwise.Theory"] = [],
        ["Clampwise.Fretboard"] = [],
        ["Clampwise.Practice"] = ["MathNet.Numerics"],
        ["Clampwise.Sound"] = ["NAudio.Core", "NAudio.Midi", "NAudio.Wasapi", "NAudio.WinMM"],
        ["Clampwise.Storage"] = ["LiteDB", "System.IO.Hashing", "Tomlyn"],
        ["Clampwise.Charts"] = ["ScottPlot"],
        ["Clampwise.Terminal"] = ["Terminal.Gui"],
        ["Clampwise"] = ["System.CommandLine"],
    };

    public static TheoryData<string> Rooms() => [.. Directory.GetDirectories(Path.Combine(Repository.Root, "src")).Select(folder => Path.GetFileName(folder))];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_refers_only_to_rooms_beneath_it(string room)
    {
        Assert.Contains(room, s_mayUse.Keys);
        string[] references = [.. Items(room, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')))];
        Assert.Empty(references.Except(s_mayUse[room]));
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_takes_in_only_its_packages(string room) =>
        Assert.Empty(Items(room, "PackageReference").Except(s_packages.GetValueOrDefault(room, [])));

    [Theory]
    [MemberData(nameof(Rooms))]
    public void The_built_assembly_agrees_with_its_project(string room)
    {
        string name = room == "Clampwise" ? "clampwise" : room;
        string[] references = [.. Assembly.Load(name).GetReferencedAssemblies().Select(reference => reference.Name!).Where(used => used.StartsWith("Clampwise", StringComparison.Ordinal))];
        Assert.Empty(references.Except(s_mayUse[room]));
    }

    public static TheoryData<string> Folders() => [.. s_folders.Keys];

    [Fact]
    public void Every_folder_of_the_program_has_its_line() =>
        Assert.Equal(s_folders.Keys.Order(), Directory.GetDirectories(Path.Combine(Repository.Root, "src", "Clampwise")).Select(folder => Path.GetFileName(folder)).Except(["bin", "obj"]).Order());

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_of_the_program_uses_only_folders_beneath_it(string folder)
    {
        string[] files = Directory.GetFiles(Path.Combine(Repository.Root, "src", "Clampwise", folder), "*.cs", SearchOption.AllDirectories);
        Assert.NotEmpty(files);
        foreach (string file in files)
        {
            string text = File.ReadAllText(file);
            Assert.Matches($@"(?m)^namespace Clampwise\.{folder}(\.\w+)?;", text);
            IEnumerable<string> used = s_folders.Keys.Where(other => other != folder && Uses(text, other));
            Assert.True(!used.Except(s_folders[folder]).Any(), $"{Path.GetFileName(file)} in {folder} uses {string.Join(", ", used.Except(s_folders[folder]))}");
        }
    }

    [Fact]
    public void What_lies_beside_the_folders_uses_none_of_them_but_the_start()
    {
        foreach (string file in Directory.GetFiles(Path.Combine(Repository.Root, "src", "Clampwise"), "*.cs").Where(file => Path.GetFileName(file) != "Program.cs"))
        {
            Assert.DoesNotContain(s_folders.Keys, other => Uses(File.ReadAllText(file), other));
        }
    }

    // By a using directive, or by a name that begins with the folder's: Look.Line. A property of the same name follows a dot.
    private static bool Uses(string text, string folder) =>
        Regex.IsMatch(text, $@"\bClampwise\.{folder}\b(?<!namespace Clampwise\.{folder})") || Regex.IsMatch(text, $@"(?<![\w.""]){folder}\.[A-Z]\w*\b(?!\w*"")");

    // A package comes along with the room that uses it, so that the project alone does not tell.
    [Fact]
    public void The_program_knows_nothing_of_the_library_that_draws() =>
        Assert.DoesNotContain("Terminal.Gui", Assembly.Load("clampwise").GetReferencedAssemblies().Select(reference => reference.Name));

    [Theory]
    [InlineData("Clampwise.Theory")]
    [InlineData("Clampwise.Fretboard")]
    [InlineData("Clampwise.Practice")]
    public void Public_types_of_the_core_have_no_setters_but_init(string room)
    {
        IEnumerable<string> mutable =
            from type in Assembly.Load(room).GetExportedTypes()
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where property.SetMethod is { IsPublic: true } setter && !IsInit(setter)
            select $"{type.Name}.{property.Name}";
        Assert.Empty(mutable);
    }

    [Fact]
    public void The_top_of_the_repository_holds_only_what_the_house_names()
    {
        string[] allowed = ["README.md", "DEVELOPERS.md", "LICENSE", "src", "tests", "soundfonts-notes", "drills", "Practice.sln", "Directory.Build.props", "Directory.Build.targets", "Directory.Packages.props", "global.json", "artifacts", "TestResults", "BenchmarkDotNet.Artifacts"];
        IEnumerable<string> found = Directory.EnumerateFileSystemEntries(Repository.Root).Select(path => Path.GetFileName(path)).Where(name => !name.StartsWith('.'));
        Assert.Empty(found.Except(allowed));
    }

    private static bool IsInit(MethodInfo setter) =>
        setter.ReturnParameter.GetRequiredCustomModifiers().Any(modifier => modifier.Name == "IsExternalInit");

    private static IEnumerable<string> Items(string room, string kind) =>
        XDocument.Parse(Repository.Read("src", room, $"{room}.csproj")).Descendants(kind).Select(item => item.Attribute("Include")!.Value);
}
