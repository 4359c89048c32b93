using Clampwise.Application;
using Clampwise.Plain;
using Clampwise.Practice;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Tests.Screens;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Tests.Plain;

/// <summary>A plain session about questions of one's choice, with a sound that is only noted down and a clock that stands until told.</summary>
internal sealed class PlainTalk
{
    private const string Drill = "first-six";

    private PlainTalk(Direction direction, int questions, TimeSpan? length, bool hasGuitar = false)
    {
        Time.SetUtcNow(new DateTimeOffset(2026, 3, 2, 18, 0, 0, TimeSpan.Zero));
        int ids = 0;
        Desk = new Desk(
            new PlayerRecord(Log, MemoryState.Empty(FsrsSettings.Usual)),
            new DrillShelf(DrillLibrary.Shipped.Drills),
            new SoundInUse(Sound),
            new Circumstances(Time, () => new Guid(++ids, 0, 0, new byte[8]), () => 7),
            new PracticeSettings { HasGuitar = hasGuitar });
        Drill drill = Desk.Shelf.Drills.First(known => known.Id.ToString() == Drill);
        PlannedItem[] items = [.. Repertoire.Of([drill]).Items.Where(item => item.Key.Direction == direction).Take(questions).Select(item => new PlannedItem(item, SessionPart.New))];
        // As if the cards of these shapes had been shown: the questions are what is talked about.
        Session = Desk.Sessions.Start(new SessionPlan(SessionKind.Quiz, [.. items], [], length)) with { CardsShown = [.. items.Select(planned => planned.Item.Key.Shape)] };
    }

    public FakeTimeProvider Time { get; } = new();

    public CapturedOut Sound { get; } = new();

    public Room.MemoryLog Log { get; } = new();

    public Desk Desk { get; }

    public string Out { get; private set; } = "";

    private SessionState Session { get; }

    /// <summary>Runs a session of one direction with these lines; one like <c>(60)</c> lets so many seconds go by.</summary>
    public static PlainTalk Of(Direction direction, params string[] lines) => Run(new PlainTalk(direction, 2, null), lines);

    /// <summary>The same with the guitar in hand: a card comes first.</summary>
    public static PlainTalk WithGuitar(Direction direction, params string[] lines) => Run(new PlainTalk(direction, 2, null, hasGuitar: true), lines);

    /// <summary>The same on a clock.</summary>
    public static PlainTalk OnTheClock(Direction direction, params string[] lines) => Run(new PlainTalk(direction, 2, TimeSpan.FromMinutes(15)), lines);

    private static PlainTalk Run(PlainTalk talk, string[] lines)
    {
        using var output = new StringWriter { NewLine = "\n" };
        Assert.True(new PlainSession(talk.Desk, talk.Session, new TimedLines(lines, talk.Time), output).Run());
        talk.Out = output.ToString();
        return talk;
    }

    private sealed class TimedLines(string[] lines, FakeTimeProvider time) : TextReader
    {
        private int _next;

        public override string? ReadLine()
        {
            while (_next < lines.Length && lines[_next] is ['(', .. var seconds, ')'])
            {
                time.Advance(TimeSpan.FromSeconds(int.Parse(seconds)));
                _next++;
            }

            return _next < lines.Length ? lines[_next++] : null;
        }
    }
}
