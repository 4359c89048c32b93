using System.Collections.Immutable;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Sound;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>All settings, in the order of the file and the screen.</summary>
internal static class SettingList
{
    private const double MillisecondsASecond = 1000.0;

    /// <summary>The tables of the file, each with its heading.</summary>
    public static ImmutableArray<(string Table, string Heading)> Tables { get; } =
        [("session", "Practice"), ("memory", "Memory"), ("guitar", "Hand and guitar"), ("screen", "Screen"), ("sound", "Sound")];

    /// <summary>All of them.</summary>
    public static ImmutableArray<Setting> All { get; } = [.. Session(), .. Memory(), .. Guitar(), .. Screen(), .. Device(), .. Playing()];

    /// <summary>The setting of a full key; null if there is none.</summary>
    public static Setting? Find(string key) => All.FirstOrDefault(setting => setting.Key == key);

    private static IEnumerable<Setting> Session() =>
    [
        new Setting<double>("session.minutes", "Length of the daily drill", "How long the daily drill lasts, on a clock that you can stop.",
            new NumberKind(1, 120, 5, 0, "min"), s => s.SessionLength.TotalMinutes, (s, value) => s with { SessionLength = TimeSpan.FromMinutes(value) }),
        new Setting<bool>("session.names", "Names are", "Chosen: a name is picked from four until it was right twice, then you type it. Typed: you type it from the start.",
            new ChoiceKind<bool>(("chosen", true), ("typed", false)), s => s.OffersNames, (s, value) => s with { OffersNames = value }),
        new Setting<TimeOnly>("session.day-start", "A practice day begins at", "What is played before this hour still counts for the day before.",
            new TimeKind(), s => s.DayStart, (s, value) => s with { DayStart = value }),
    ];

    // The range of the retention is the memory model's own.
    private static IEnumerable<Setting> Memory() =>
    [
        new Setting<double>("memory.retention", "Chance to remember", "A shape comes back when your chance to know it has sunk to this: higher asks more often.",
            new NumberKind(0.7, 0.97, 0.01, 2), s => s.Memory.DesiredRetention, (s, value) => s with { Memory = new FsrsSettings(value, s.Memory.CountsSameDay) }),
        new Setting<bool>("memory.same-day", "Repeats within a day count", "Whether a second answer to the same question on one day changes how well it is known.",
            new FlagKind(), s => s.Memory.CountsSameDay, (s, value) => s with { Memory = new FsrsSettings(s.Memory.DesiredRetention, value) }),
    ];

    private static IEnumerable<Setting> Guitar() =>
    [
        new Setting<OwnClamps>("guitar.clamps", "Your partial clamps", "How many strings each of them holds, such as 3, 5: no drill that takes another is asked. A full capo is taken to be at hand.",
            new ClampsKind(), s => s.Clamps, (s, value) => s with { Clamps = value }),
        new Setting<Fretboard.Hand>("guitar.hand", "Span of your hand", "From index to little finger along the neck: a shape beyond it is no answer.",
            new HandKind(), s => s.Hand, (s, value) => s with { Hand = value }),
        new Setting<bool>("guitar.in-hand", "Guitar in hand", "Yes: one setup at a time, with a card where the clamp goes, and names are played. No: shapes are placed on the screen.",
            new FlagKind(), s => s.HasGuitar, (s, value) => s with { HasGuitar = value }),
        new Setting<bool>("guitar.left-handed", "Left-handed", "Turns every fretboard round; strings and frets keep their numbers.",
            new FlagKind(), s => s.Fretboard.IsLeftHanded, (s, value) => s with { Fretboard = s.Fretboard with { IsLeftHanded = value } }),
        new Setting<bool>("guitar.fretboard", "Fretboards", "Lying as tablature does, or upright as chord diagrams do where the height allows it.",
            new ChoiceKind<bool>(("lying", false), ("upright", true)), s => s.Fretboard.IsUpright, (s, value) => s with { Fretboard = s.Fretboard with { IsUpright = value } }),
        new Setting<DotSign>("guitar.dots", "On the dots", "Nothing, finger numbers, degrees or pitches; these two stay off while a question is open.",
            new ChoiceKind<DotSign>(("dots", DotSign.Dots), ("fingers", DotSign.Fingers), ("degrees", DotSign.Degrees), ("pitches", DotSign.Pitches)), s => s.Dots, (s, value) => s with { Dots = value }),
        new Setting<FretCount>("guitar.frets", "Frets are counted from", "The nut, the home clamp (it is 0, frets behind it are negative), or both.",
            new ChoiceKind<FretCount>(("both", FretCount.Both), ("nut", FretCount.Nut), ("clamp", FretCount.Clamp)), s => s.Fretboard.Count, (s, value) => s with { Fretboard = s.Fretboard with { Count = value } }),
    ];

    private static IEnumerable<Setting> Screen() =>
    [
        new Setting<bool>("screen.welcome", "Welcome at the next start", "Pick a clamp, hear it, answer three questions: shown at the first start only, unless you ask for it here.",
            new FlagKind(), s => s.ShowsWelcome, (s, value) => s with { ShowsWelcome = value }),
        new Setting<string>("screen.theme", "Colours", "Own leaves the terminal's ground as it is, dark and light paint theirs, plain has no colour.",
            new ChoiceKind<string>([.. ThemeBook.Shipped.Names.Select(name => (name, name))]), s => s.Theme, (s, value) => s with { Theme = value }),
        new Setting<GlyphChoice>("screen.glyphs", "Characters", "What drawings are made of: unicode, ascii, or auto for what your locale says.",
            new ChoiceKind<GlyphChoice>(("auto", GlyphChoice.Auto), ("unicode", GlyphChoice.Unicode), ("ascii", GlyphChoice.Ascii)), s => s.Glyphs, (s, value) => s with { Glyphs = value }),
    ];

    private static IEnumerable<Setting> Device() =>
    [
        new Setting<bool>("sound.on", "Sound", "Without sound, questions for the ear are left out.",
            new FlagKind(), s => s.Sound.IsOn, (s, value) => s with { Sound = s.Sound with { IsOn = value } }),
        new Setting<double>("sound.latency", "Sound buffered ahead", "Less answers sooner; more never stutters.",
            new NumberKind(20, 100, 5, 0, "ms"), s => s.Sound.Latency.TotalMilliseconds, (s, value) => s with { Sound = s.Sound.WithLatency((int)value).Value }),
        new Setting<string>("sound.device", "Sound device", "The system's name of the device, such as hw:1 on Linux; empty for the system's own choice.",
            new TextKind("the system's own"), s => s.Sound.Device ?? "", (s, value) => s with { Sound = s.Sound with { Device = OrNull(value) } }),
        new Setting<string>("sound.soundfont", "SoundFont file", "The path of an .sf2 file of your own to play with; empty for the computed guitar.",
            new TextKind("the computed guitar"), s => s.Sound.SoundFontPath ?? "", (s, value) => s with { Sound = s.Sound with { SoundFontPath = OrNull(value) } }),
        new Setting<string>("sound.preset", "Preset of that file", "A name, part of one, a number, or bank:number; empty for the first guitar in the file.",
            new TextKind("the first guitar"), s => s.Sound.SoundFontPreset ?? "", (s, value) => s with { Sound = s.Sound with { SoundFontPreset = OrNull(value) } }),
    ];

    private static IEnumerable<Setting> Playing() =>
    [
        new Setting<double>("sound.a4", "A4 is tuned to", "What everything is played at; 440 Hz is the standard (ISO 16).",
            new NumberKind(ConcertPitch.LowestHertz, ConcertPitch.HighestHertz, 1, 1, "Hz"), s => s.Style.ConcertPitch.A4Hertz, (s, value) => s with { Style = s.Style with { ConcertPitch = ConcertPitch.Of(value).Value } }),
        new Setting<double>("sound.strum", "A strum takes", "From the first string to the last: 20 ms is brisk, 400 ms lets each string be heard.",
            new NumberKind(20, 400, 5, 0, "ms"), s => s.Style.StrumTime.TotalMilliseconds, (s, value) => s with { Style = s.Style with { StrumTime = TimeSpan.FromSeconds(value / MillisecondsASecond) } }),
        new Setting<double>("sound.pick-position", "Where the strings are picked", "As a part of the string from the bridge: 0.03 is thin and bright, 0.5 round.",
            new NumberKind(0.03, 0.5, 0.01, 2), s => s.Style.Pick.Position, (s, value) => s with { Style = s.Style with { Pick = Pick.Of(value, s.Style.Pick.Hardness).Value } }),
        new Setting<double>("sound.pick-hardness", "How stiff the pick is", "0 is the flesh of the thumb, 1 a stiff pick.",
            new NumberKind(0, 1, 0.1, 2), s => s.Style.Pick.Hardness, (s, value) => s with { Style = s.Style with { Pick = Pick.Of(s.Style.Pick.Position, value).Value } }),
        new Setting<double>("sound.strength", "How hard they are picked", "0.05 is hardly touched, 1 as hard as it goes.",
            new NumberKind(0.05, 1, 0.05, 2), s => s.Style.Strength.Value, (s, value) => s with { Style = s.Style with { Strength = Strength.Of(value).Value } }),
    ];

    private static string? OrNull(string text) => text.Length == 0 ? null : text;
}
