using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

/// <summary>Every screen of the program, in three sizes without colour and once in the colours of the usual theme.</summary>
[Collection(nameof(TestTerminal))]
public class AllScreensTests
{
    private static readonly (int Columns, int Rows)[] s_sizes = [(60, 20), (80, 24), (120, 40)];

    public static TheoryData<string> Names => [.. Scenes.Names];

    public static TheoryData<string> FixedNames => [.. Scenes.Fixed];

    public static TheoryData<string, int, int> NamesAndSizes => InAllSizes(Scenes.Names);

    public static TheoryData<string, int, int> FixedNamesAndSizes => InAllSizes(Scenes.Fixed);

    [Theory]
    [MemberData(nameof(FixedNamesAndSizes))]
    public void A_screen_without_colour(string name, int columns, int rows)
    {
        using var room = new Room(columns, rows);
        Scenes.Show(name, room);
        Golden.Check($"{name}-{columns}x{rows}", room.Screen);
    }

    // A letter for the tone of each cell: S strong, q quiet, k key, R right, W wrong, H held, F free, f finger, o the other voicing, m muted, C cursor.
    [Theory]
    [MemberData(nameof(FixedNames))]
    public void The_tones_of_a_screen(string name)
    {
        using var room = new Room(theme: Theme.Own);
        Scenes.Show(name, room);
        string tones = room.Tones(Theme.Own);
        Assert.DoesNotContain('!', tones);
        Golden.Check($"{name}-tones", tones);
    }

    [Theory]
    [MemberData(nameof(NamesAndSizes))]
    public void A_screen_has_its_title_its_way_out_and_help_and_room_for_all_its_lines(string name, int columns, int rows)
    {
        using var room = new Room(columns, rows);
        Scenes.Show(name, room);
        string[] lines = room.Screen.Split('\n');
        Page front = room.Frame.Front;
        Assert.StartsWith($"Clampwise  {front.Title}", lines[0].TrimStart(), StringComparison.Ordinal);
        Assert.EndsWith(front.Corner, lines[0].TrimEnd(), StringComparison.Ordinal);
        string keys = lines[rows - 1];
        Assert.Contains(WaysOut, way => keys.Contains(way, StringComparison.Ordinal));
        Assert.True(front is HelpPage || keys.Contains("? help", StringComparison.Ordinal) || keys.Contains("F1 help", StringComparison.Ordinal), keys);
        Assert.All(front.Help, paragraph => Assert.NotEmpty(paragraph));
        // A page that does not scroll loses the lines that there is no room for.
        int given = front.Draw(columns - 2, rows - 3).Count;
        Assert.True(given <= rows - 3 || front.Keys.Any(key => key.Does == "scroll"), $"{given} lines for {rows - 3} rows");
        // A list may cut what it says about an entry; whatever else is cut is lost.
        Assert.True(front is FindPage or DrillsPage || !room.Screen.Contains(GlyphSet.Unicode.More, StringComparison.Ordinal), room.Screen);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_screen_in_ascii_holds_nothing_else(string name)
    {
        using var room = new Room(60, 20, glyphs: GlyphSet.Ascii);
        Scenes.Show(name, room);
        Assert.All(room.Screen, sign => Assert.InRange(sign, '\n', '~'));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_screen_is_the_same_after_the_terminal_was_too_small(string name)
    {
        using var room = new Room();
        Scenes.Show(name, room);
        string before = room.Screen;
        Assert.Contains("is too small", room.Resize(20, 5).Screen);
        Assert.Equal(before, room.Resize(80, 24).Screen);
    }

    [Fact]
    public void Every_direction_has_its_screen()
    {
        Assert.Equal(Directions.All.Order(), Scenes.Asking.Values.Order());
        foreach ((string name, Direction direction) in Scenes.Asking)
        {
            using var room = new Room();
            Scenes.Show(name, room);
            room.Press(room.Frame.Front.IsTyping ? KeyPress.F(7) : KeyPress.Of('k'));
            Assert.Equal(direction, Assert.Single(room.Log.Attempts).Item.Direction);
        }
    }

    // A page that is added without a scene fails here.
    [Fact]
    public void Every_page_of_the_program_is_among_the_screens()
    {
        HashSet<Type> shown = [];
        foreach (string name in Scenes.Names)
        {
            using var room = new Room();
            Scenes.Show(name, room);
            shown.Add(room.Frame.Front.GetType());
        }

        Assert.Equal(Pages.All.Select(page => page.Name).Order(), shown.Select(page => page.Name).Order());
    }

    [Fact]
    public void Too_small_says_so_at_any_size()
    {
        using var room = new Room(59, 19);
        Golden.Check("too-small", room.Screen);
        Assert.Contains("20x5 is too small", room.Resize(20, 5).Screen);
        Assert.NotEmpty(room.Resize(1, 1).Screen);
    }

    private static TheoryData<string, int, int> InAllSizes(IEnumerable<string> names)
    {
        var all = new TheoryData<string, int, int>();
        foreach ((string name, (int columns, int rows)) in names.SelectMany(name => s_sizes.Select(size => (name, size))))
        {
            all.Add(name, columns, rows);
        }

        return all;
    }

    private static string[] WaysOut => ["Esc ", "q quit", "Enter back"];
}
