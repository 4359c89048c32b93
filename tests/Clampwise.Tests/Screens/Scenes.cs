using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

/// <summary>Every screen of the program by name, and the keys that lead to it from the first one.</summary>
internal static class Scenes
{
    private static readonly Dictionary<string, Action<Room>> s_ways = new()
    {
        ["welcome-pick"] = room => Welcome(room),
        ["welcome-hear"] = room => Welcome(room).Press(KeyPress.Enter),
        ["welcome-cautions"] = room => Welcome(room).Press(KeyPress.Esc),
        ["today"] = _ => { },
        ["today-resting"] = room => room.Press(KeyPress.Enter).After(60).Press(KeyPress.Esc, KeyPress.Esc),
        ["waiting"] = room => room.Press(KeyPress.Enter).Type("k").After(60).Press(KeyPress.Esc, KeyPress.Esc).Type("n"),
        ["drills"] = room => room.Type("d"),
        ["quiz"] = room => room.Type("n"),
        ["question"] = room => room.Press(KeyPress.Enter),
        ["question-typed"] = room => room.Press(KeyPress.Enter).Type("tDsu"),
        ["question-sounding"] = room => Ask(room, Direction.SeeShapeSaySoundingName),
        ["question-place"] = room => Ask(room, Direction.NamePlaceShape),
        ["question-hear"] = room => Ask(room, Direction.HearSayName),
        ["question-pick"] = room => Ask(room, Direction.HearPickShape),
        ["question-compare"] = room => Ask(room, Direction.HearTwoCompare),
        ["question-rig"] = room => Ask(room, Direction.ShapeNameSaySoundingName),
        ["question-rig-back"] = room => Ask(room, Direction.SoundingNameSayShapeName),
        ["question-change"] = room => Ask(room, Direction.ChangeInTime),
        ["question-play"] = room => WithGuitar(room, Direction.NamePlaceShape).Press(KeyPress.Enter),
        ["question-played"] = room => WithGuitar(room, Direction.NamePlaceShape).Press(KeyPress.Enter, KeyPress.Enter),
        ["card-clamps"] = room => WithGuitar(room, Direction.SeeShapeSayShapeName),
        ["card-shape"] = room => Cards(room).Press(KeyPress.Enter),
        ["help-card"] = room => Cards(room).Press(KeyPress.Enter, KeyPress.F(1)),
        ["hint"] = room => room.Press(KeyPress.Enter).After(4).Type("h"),
        ["skip"] = room => room.Press(KeyPress.Enter).After(4).Type("n"),
        ["verdict"] = room => room.Press(KeyPress.Enter).After(4).Type("h2"),
        ["verdict-right"] = room => room.Press(KeyPress.Enter).After(2).Type("t").Type(Expected()).Press(KeyPress.Enter),
        ["verdict-unknown"] = room => room.Press(KeyPress.Enter).After(9).Type("k"),
        ["verdict-place"] = room => Ask(room, Direction.NamePlaceShape).After(9).Press(KeyPress.Right, KeyPress.Space, KeyPress.Enter),
        ["paused"] = room => room.Press(KeyPress.Enter).After(4).Type("h2p"),
        ["summary"] = room => room.Press(KeyPress.Enter).After(4).Type("h2pe"),
        ["weak-nothing"] = room => room.Type("w"),
        ["weak"] = room => Practised(room).Type("w"),
        ["explorer"] = room => Explore(room).Press(KeyPress.Down, KeyPress.Down, KeyPress.Down, KeyPress.Right, KeyPress.Space).Type("x").Press(KeyPress.Space),
        ["find"] = room => Explore(room).Type("fdm").Press(KeyPress.Enter),
        ["setup"] = room => Explore(room).Type("c").Press(KeyPress.Down, KeyPress.F(3)),
        ["tune"] = room => Explore(room).Type("t"),
        ["detune"] = room => Explore(room).Type("tw3"),
        ["progress-nothing"] = room => room.Type("p"),
        ["map"] = room => Practised(room).Type("pm"),
        ["map-nothing"] = room => room.Type("pm"),
        ["progress"] = room => Practised(room).Type("p"),
        ["settings"] = room => room.Type("s"),
        ["settings-end"] = room => room.Type("s").Press(KeyPress.End).Press(KeyPress.Right),
        ["settings-typing"] = room => room.Type("s").Press(KeyPress.Home).Type("999").Press(KeyPress.Enter),
        ["help-welcome"] = room => Welcome(room).Press(KeyPress.F(1)),
        ["help-today"] = room => room.Press(KeyPress.F(1)),
        ["help-drills"] = room => room.Type("d").Press(KeyPress.F(1)),
        ["help-session"] = room => room.Press(KeyPress.Enter, KeyPress.F(1)),
        ["help-waiting"] = room => room.Press(KeyPress.Enter).After(60).Press(KeyPress.Esc, KeyPress.Esc).Type("n").Press(KeyPress.F(1)),
        ["help-summary"] = room => room.Press(KeyPress.Enter).Type("kpe").Press(KeyPress.F(1)),
        ["help-weak"] = room => room.Type("w").Press(KeyPress.F(1)),
        ["help-explorer"] = room => Explore(room).Press(KeyPress.F(1)),
        ["help-find"] = room => Explore(room).Type("f").Press(KeyPress.F(1)),
        ["help-setup"] = room => Explore(room).Type("c").Press(KeyPress.F(1)),
        ["help-tune"] = room => Explore(room).Type("t").Press(KeyPress.F(1)),
        ["help-detune"] = room => Explore(room).Type("tw").Press(KeyPress.F(1)),
        ["help-progress"] = room => room.Type("p").Press(KeyPress.F(1)),
        ["help-settings"] = room => room.Type("s").Press(KeyPress.F(1)),
    };

    /// <summary>The names.</summary>
    public static IEnumerable<string> Names => s_ways.Keys;

    /// <summary>Those that show the same wherever the tests run: the help on the settings names their file.</summary>
    public static IEnumerable<string> Fixed => Names.Where(name => name != "help-settings");

    /// <summary>The screens that ask in a direction of their own.</summary>
    public static IReadOnlyDictionary<string, Direction> Asking { get; } = new Dictionary<string, Direction>
    {
        ["question"] = Direction.SeeShapeSayShapeName,
        ["question-sounding"] = Direction.SeeShapeSaySoundingName,
        ["question-place"] = Direction.NamePlaceShape,
        ["question-hear"] = Direction.HearSayName,
        ["question-pick"] = Direction.HearPickShape,
        ["question-compare"] = Direction.HearTwoCompare,
        ["question-rig"] = Direction.ShapeNameSaySoundingName,
        ["question-rig-back"] = Direction.SoundingNameSayShapeName,
        ["question-change"] = Direction.ChangeInTime,
    };

    /// <summary>Goes there.</summary>
    public static void Show(string name, Room room) => s_ways[name](room);

    private static Room Welcome(Room room)
    {
        room.Frame.Open(new WelcomePage(room.Frame, room.Desk, room.Settings));
        return room;
    }

    private static Room Cards(Room room)
    {
        room.PassesCards = false;
        return room;
    }

    // A question with the guitar in hand, its card first.
    private static Room WithGuitar(Room room, Direction direction)
    {
        room.Desk.Use(room.Desk.Settings with { HasGuitar = true });
        room.PassesCards = false;
        PracticeItem item = room.Desk.Repertoire.Items.First(item => item.Key.Direction == direction);
        var plan = new SessionPlan(SessionKind.Quiz, [new PlannedItem(item, SessionPart.Due)], [], null);
        room.Frame.Open(new SessionPage(room.Frame, room.Desk, room.Desk.Sessions.Start(plan) with { CardsShown = [item.Key.Shape] }));
        return room;
    }

    private static Room Explore(Room room)
    {
        room.Frame.Open(new ExplorerPage(room.Frame, room.Desk, Setup.Parse("standard + 2-4@2").Value));
        return room;
    }

    // One question of a direction, whatever a plan would ask.
    private static Room Ask(Room room, Direction direction)
    {
        PracticeItem item = room.Desk.Repertoire.Items.First(item => item.Key.Direction == direction);
        PlannedItem[] planned = [new PlannedItem(item, SessionPart.Due)];
        room.Frame.Open(new SessionPage(room.Frame, room.Desk, room.Desk.Sessions.Start(new SessionPlan(SessionKind.Daily, [.. planned], [], TimeSpan.FromMinutes(15)))));
        return room.PassCards();
    }

    // A quiz in which nothing is known.
    private static Room Practised(Room room)
    {
        room.Type("n");
        while (room.Frame.Front is SessionPage)
        {
            room.After(5).Press(room.Frame.Front.IsTyping ? KeyPress.F(7) : KeyPress.Of('k'));
            if (room.Frame.Front is SessionPage)
            {
                room.Press(KeyPress.Enter);
            }
        }

        return room.Press(KeyPress.Enter);
    }

    // The answer to the first question, from the log of somebody who did not know it.
    private static string Expected()
    {
        using var other = new Room();
        return other.Press(KeyPress.Enter).Type("k").Log.Attempts.Single().Expected;
    }
}
