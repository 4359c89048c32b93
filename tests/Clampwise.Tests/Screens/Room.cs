using Clampwise.Application;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Screens;
using Clampwise.Screens.Session;
using Clampwise.Settings;
using Clampwise.Sound;
using Clampwise.Sound.Players;
using Clampwise.Sound.Strings;
using Clampwise.Storage;
using Clampwise.Terminal;
using Clampwise.Theory;
using Microsoft.Extensions.Time.Testing;

namespace Clampwise.Tests.Screens;

/// <summary>The whole program in a terminal in memory: a log that remembers, a sound that is only noted down, a clock that stands until told.</summary>
internal sealed class Room : IDisposable
{
    private readonly TestTerminal _terminal;
    private readonly string _folder = Directory.CreateTempSubdirectory("clampwise-room-").FullName;

    public Room(int columns = 80, int rows = 24, bool isAudible = true, IEnumerable<Drill>? drills = null, Theme? theme = null, GlyphSet? glyphs = null, TimeSpan? given = null, string? settingsFile = null, bool welcomes = false, bool hasGuitar = false)
    {
        _terminal = new TestTerminal(columns, rows, theme, glyphs);
        Time.SetUtcNow(new DateTimeOffset(2026, 3, 2, 18, 0, 0, TimeSpan.Zero));
        Sound = isAudible ? new CapturedOut() : new SilentOut("no sound here", new PluckedGuitar());
        int ids = 0;
        Desk = new ScreenDesk(
            new PlayerRecord(Log, MemoryState.Empty(FsrsSettings.Usual)),
            new DrillShelf(drills ?? DrillLibrary.Shipped.Drills),
            new SoundInUse(Sound),
            new Circumstances(Time, () => new Guid(++ids, 0, 0, new byte[8]), () => 7 + (0 * ++Seeds)),
            PlayerSettings.Usual with { HasGuitar = hasGuitar },
            _terminal.Glyphs);
        if (settingsFile is not null)
        {
            File.WriteAllText(Path.Combine(_folder, "settings.toml"), settingsFile);
        }

        Settings = new SettingsKeeper(new SettingsFile(Path.Combine(_folder, "settings.toml")));
        var around = new Surroundings(TextReader.Null, TextWriter.Null, TextWriter.Null, true, Time, name => name is "LANG" ? (_terminal.Glyphs == GlyphSet.Ascii ? "C" : "C.UTF-8") : name is "TERM" ? "xterm-256color" : null, _ => { })
        {
            OpenSound = (asked, _) =>
            {
                Opened.Add(asked);
                var opened = new CapturedOut();
                Played.Add(opened);
                return opened;
            },
        };
        var inForce = new SettingsInForce(Frame, Desk, Settings, around, given, memory =>
        {
            Remembered.Add(memory);
            return MemoryState.Rebuild(Log.ReadAll(), memory);
        });
        Frame.Open(new TodayPage(Frame, Desk, Settings, inForce.Settle, () => []));
        if (welcomes)
        {
            Frame.Open(new WelcomePage(Frame, Desk, Settings));
        }
    }

    /// <summary>True to go on from each card at once, so that what shows is a question.</summary>
    public bool PassesCards { get; set; } = true;

    /// <summary>The settings, with a file in a folder of this room's own.</summary>
    public SettingsKeeper Settings { get; }

    /// <summary>Sounds that were opened since.</summary>
    public List<SoundSettings> Opened { get; } = [];

    /// <summary>What was played through each of them.</summary>
    public List<CapturedOut> Played { get; } = [];

    /// <summary>Settings by which the log was worked out anew.</summary>
    public List<FsrsSettings> Remembered { get; } = [];

    /// <summary>How often chance was asked for a seed.</summary>
    public int Seeds { get; private set; }

    public FakeTimeProvider Time { get; } = new();

    public MemoryLog Log { get; } = new();

    public ISoundOut Sound { get; }

    public ScreenDesk Desk { get; }

    public Frame Frame => _terminal.Frame;

    public string Screen => _terminal.Screen;

    public string Sent => _terminal.Sent;

    public string Colours => _terminal.Colours;

    /// <summary>The tone of every cell, by the theme that is worn.</summary>
    public string Tones(Theme theme) => _terminal.Tones(theme);

    public Room Press(params KeyPress[] keys)
    {
        foreach (KeyPress key in keys)
        {
            _terminal.Press([key]);
            PassCards();
        }

        return this;
    }

    public Room Type(string text)
    {
        foreach (char letter in text)
        {
            _terminal.Type($"{letter}");
            PassCards();
        }

        return this;
    }

    /// <summary>Goes on from the cards that are shown, unless they are what is wanted.</summary>
    public Room PassCards()
    {
        while (PassesCards && !Frame.IsEmpty && Frame.Front is SessionPage { Card: not null })
        {
            _terminal.Press([KeyPress.Enter]);
        }

        return this;
    }

    public Room After(double seconds)
    {
        Time.Advance(TimeSpan.FromSeconds(seconds));
        return this;
    }

    public Room Resize(int columns, int rows)
    {
        _terminal.Resize(columns, rows);
        return this;
    }

    public void Dispose()
    {
        _terminal.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    /// <summary>A log in memory.</summary>
    internal sealed class MemoryLog : IAttemptLog
    {
        private readonly List<LogEntry> _entries = [];

        public IEnumerable<Attempt> Attempts => _entries.OfType<Attempt>();

        public Fault? Refusal { get; set; }

        public Fault? Append(LogEntry entry)
        {
            if (Refusal is null)
            {
                _entries.Add(entry);
            }

            return Refusal;
        }

        public IReadOnlyList<LogEntry> ReadAll() => [.. _entries];
    }
}
