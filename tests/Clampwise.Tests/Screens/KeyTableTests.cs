using System.Globalization;
using Clampwise.Screens;
using Clampwise.Sound.Players;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

/// <summary>
/// The keys that are listed are the keys that act, on every screen of the program. What a key does is seen from outside: by the
/// screen, by what sounds, by what stands in the log, by what the frame holds.
/// </summary>
[Collection(nameof(TestTerminal))]
public class KeyTableTests
{
    private static readonly KeyPress[] s_all =
    [
        .. Enumerable.Range(' ', '~' - ' ' + 1).Select(sign => KeyPress.Of((char)sign)),
        .. Enum.GetValues<NamedKey>().Where(name => name != NamedKey.None).Select(KeyPress.Of),
        KeyPress.Tab.WithShift, KeyPress.Of('r').WithAlt, KeyPress.Of('d').WithCtrl,
    ];

    public static TheoryData<string> Names => [.. Scenes.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_listed_key_acts(string name)
    {
        using var room = new Room();
        Scenes.Show(name, room);
        IReadOnlyList<PageKey> keys = room.Frame.Keys;
        // What is all on the screen does not scroll.
        bool scrolls = room.Frame.Front.Draw(78, 21).Count > 21;
        foreach (PageKey key in keys.Where(key => scrolls || key.Does != "scroll"))
        {
            KeyPress[] named = [.. Named(key.Label)];
            Assert.NotEmpty(named);
            Assert.All(named, press => Assert.True(key.Takes(press), $"{key.Label} is not taken as {press}"));
            // Some mean something only after another one: what is typed can be completed, a changed setting has its default.
            bool acts = named.Any(press => Acts(name, press)) || keys.Any(first => named.Any(press => Acts(name, Named(first.Label).Last(), press)));
            Assert.True(acts, $"{name}: {key.Label} {key.Does} does nothing");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_key_that_acts_is_listed(string name)
    {
        using var room = new Room();
        Scenes.Show(name, room);
        PageKey[] keys = [.. room.Frame.Keys];
        if (keys.Any(key => key.TakesAny))
        {
            return;
        }

        // Any key takes the notice away that the one before it left.
        room.Frame.Press(default);
        string before = Seen(room);
        foreach (KeyPress press in s_all.Where(press => !keys.Any(key => key.Takes(press))))
        {
            room.Frame.Press(press);
            Assert.True(Seen(room) == before, $"{name}: {press} acts and is not listed");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_key_line_and_the_help_show_the_listed_keys(string name)
    {
        using var room = new Room(200, 60);
        Scenes.Show(name, room);
        PageKey[] keys = [.. room.Frame.Keys];
        string line = room.Screen.TrimEnd().Split('\n')[^1];
        Assert.All(keys.Where(key => key.IsOnLine), key => Assert.Contains($"{key.Label} {key.Does}", line));
        if (room.Frame.Front is not HelpPage)
        {
            string help = string.Join('\n', room.Press(KeyPress.F(1)).Frame.Front.Draw(200, 60).Select(drawn => string.Concat(drawn.Runs.Select(run => run.Text))));
            Assert.All(keys, key => Assert.Contains($"{key.Names} {key.Does}", help));
        }
    }

    private static bool Acts(string name, params KeyPress[] presses)
    {
        using var room = new Room();
        Scenes.Show(name, room);
        foreach (KeyPress first in presses[..^1])
        {
            room.Frame.Press(first);
        }

        if (room.Frame.Front.GetType() is var front && presses.Length > 1 && !StillThere(name, front))
        {
            return false;
        }

        string before = Seen(room);
        room.Frame.Press(presses[^1]);
        return Seen(room) != before;
    }

    // A first key that opens another page says nothing of this one's.
    private static bool StillThere(string name, Type front)
    {
        using var room = new Room();
        Scenes.Show(name, room);
        return room.Frame.Front.GetType() == front;
    }

    private static string Seen(Room room) => string.Create(CultureInfo.InvariantCulture,
        $"{Text(room.Frame)}{room.Frame.IsEmpty}{((CapturedOut)room.Sound).Played.Count} {room.Played.Sum(sound => sound.Played.Count)} {room.Log.ReadAll().Count}");

    private static string Text(Frame frame) => string.Join('\n', frame.Compose(80, 24).Select(line => string.Concat(line.Select(run => run.Text))));

    // What a label on the key line says to press, read here anew.
    private static IEnumerable<KeyPress> Named(string label) => label switch
    {
        "arrows" => [KeyPress.Up, KeyPress.Down, KeyPress.Left, KeyPress.Right],
        "letters" => [KeyPress.Of('g')],
        "dzw" => [KeyPress.Of('d'), KeyPress.Of('z'), KeyPress.Of('w')],
        [var from, '-', var to] when char.IsAsciiDigit(from) => Enumerable.Range(from, to - from + 1).Select(digit => KeyPress.Of((char)digit)),
        _ => label.Split(' ').Select(One),
    };

    private static KeyPress One(string word) => word switch
    {
        [var sign] => KeyPress.Of(sign),
        "Space" => KeyPress.Space,
        "PgUp" => KeyPress.PageUp,
        "PgDn" => KeyPress.PageDown,
        _ => KeyPress.Of(Enum.Parse<NamedKey>(word)),
    };
}
