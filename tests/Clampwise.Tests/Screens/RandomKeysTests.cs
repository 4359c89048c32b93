using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class RandomKeysTests
{
    private static readonly KeyPress[] s_keys =
    [
        KeyPress.Enter, KeyPress.Enter, KeyPress.Enter, KeyPress.Space, KeyPress.Esc, KeyPress.Tab, KeyPress.Backspace, KeyPress.Up, KeyPress.Down, KeyPress.Left, KeyPress.Right,
        KeyPress.PageUp, KeyPress.PageDown, KeyPress.Home, KeyPress.End, KeyPress.F(1), KeyPress.F(2), KeyPress.F(3), KeyPress.F(4), KeyPress.F(5), KeyPress.F(6), KeyPress.F(7), KeyPress.F(8), KeyPress.F(9), KeyPress.Delete,
    ];

    private const string Signs = "abcdefghijklmnoprstuvwxyzABCDEFG0123456789#/+-=.^?@ (),";

    private const int MostKeys = 20_000;
    private const int KeysToAWayBack = 60;

    // CLAMPWISE_RANDOM_KEYS sets how many keys each seed presses, for a long run by hand.
    private static int Count => int.TryParse(Environment.GetEnvironmentVariable("CLAMPWISE_RANDOM_KEYS"), out int count) ? count : 1500;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void No_key_crashes_and_no_answer_is_lost(int seed)
    {
        var random = new Random(seed);
        using var room = new Room(isAudible: seed % 2 == 0, welcomes: true);
        HashSet<Type> reached = [];
        // A run that has missed a page goes on until it is reached, but not for ever.
        for (int i = 0; i < Count || (reached.Count < Pages.All.Count && i < MostKeys); i++)
        {
            Step(room, random);
            reached.Add(room.Frame.Front.GetType());
            if (i % KeysToAWayBack == 0)
            {
                GoBack(room);
            }
        }

        Assert.Equal(Pages.All.Select(page => page.Name).Order(), reached.Select(page => page.Name).Order());

        _ = room.Screen;
        // What the pages know of the player is what the log says, once the session in front is put down.
        while (room.Frame.Front is not TodayPage)
        {
            room.Frame.Close();
        }

        MemoryState rebuilt = MemoryState.Rebuild(room.Log.ReadAll(), room.Desk.Settings.Memory);
        Assert.Equal(rebuilt.AttemptCount, room.Desk.Record.Memory.AttemptCount);
        Assert.Equal(rebuilt.Items.Count, room.Desk.Record.Memory.Items.Count);
        Assert.All(rebuilt.Items, pair => Assert.Equal(pair.Value.Memory, room.Desk.Record.Memory.Items[pair.Key].Memory));
    }

    // To the first page, where the ways part: left to chance alone, keys stay in sessions.
    private static void GoBack(Room room)
    {
        for (int i = 0; i < 6 && room.Frame.Front is not TodayPage; i++)
        {
            room.Press(KeyPress.Esc);
        }
    }

    private static void Step(Room room, Random random)
    {
        room.After(random.NextDouble() * 3);
        switch (random.Next(20))
        {
            case 0:
                room.Resize(random.Next(30, 220), random.Next(8, 60));
                break;
            case < 9:
                room.Press(s_keys[random.Next(s_keys.Length)]);
                break;
            default:
                room.Type(Signs[random.Next(Signs.Length)].ToString());
                break;
        }

        if (random.Next(8) == 0)
        {
            _ = room.Screen;
        }
    }
}
