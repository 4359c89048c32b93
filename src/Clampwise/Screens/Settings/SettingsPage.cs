using System.Collections.Immutable;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Settings;
using Clampwise.Sound.Performing;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>All settings in a list: arrows change the one under the cursor, and it is saved at once.</summary>
/// <param name="frame">The frame.</param>
/// <param name="desk">What plays an example.</param>
/// <param name="settings">The settings and their file.</param>
/// <param name="settle">Puts to work what takes its time: called before an example sounds and when the page is left.</param>
internal sealed class SettingsPage(Frame frame, ScreenDesk desk, SettingsKeeper settings, Action settle) : Page
{
    private const int TitleWidth = 31;
    private const int AboutRows = 2;
    private const int NoticeRows = 2;
    private static readonly ImmutableArray<Setting> s_all = SettingList.All;
    private int _at;
    private string? _typed;
    private string? _notice;

    public override string Title => "settings";

    public override string Corner => $"{_at + 1} of {s_all.Length}";

    public override bool IsTyping => _typed is not null;

    public override IReadOnlyList<PageKey> Keys => IsTyping ? TypingKeys : ListKeys;

    public override IReadOnlyList<string> Help =>
    [
        "Up and down choose a setting, left and right change it. Enter, or a digit, lets you type the value of those that are numbers or texts. What you change holds at once and is saved at once. u puts the default value back, p plays a voicing the way it is set.",
        $"The settings stand in {settings.File.Path}, a TOML file that you can change yourself: comments in it stay. 'clampwise settings --write' writes one out in full; 'clampwise settings' lists what holds.",
    ];

    private Setting Here => s_all[_at];

    public override IReadOnlyList<Line> Draw(int width, int height)
    {
        Line[] foot = [Line.Empty, .. About(width), .. Notices(width)];
        int room = Math.Max(1, height - foot.Length);
        Line[] rows = [.. SettingList.Tables.SelectMany(table => Rows(table.Table, table.Heading, width))];
        int row = Array.FindIndex(rows, line => line.Runs[0].Text == Mark(true));
        // The heading above the first setting of a table comes along.
        int top = Math.Clamp(row - room + 2, 0, Math.Max(0, rows.Length - room));
        Line[] seen = [.. rows.Skip(top).Take(room)];
        return [.. seen, .. foot];
    }

    protected override void BeforeKey() => _notice = null;

    public override void Leave() => settle();

    private PageKey[] TypingKeys =>
    [
        PageKey.On(KeyPress.Enter, "take it", () => Take(_typed!)),
        PageKey.On(KeyPress.Esc, "leave it as it was", () => _typed = null),
        PageKey.On(KeyPress.Backspace, "one sign back", () => _typed = _typed!.Length > 0 ? _typed[..^1] : "").InHelpAlone,
        new PageKey("letters", "the value", [], press => _typed += press.Text) { IsOnLine = false, TakesText = true },
    ];

    private PageKey[] ListKeys =>
    [
        PageKey.Steps(KeyPress.Up, KeyPress.Down, "choose", step => _at = Math.Clamp(_at + step, 0, s_all.Length - 1)),
        .. Here.IsStepped ? [PageKey.Steps(KeyPress.Left, KeyPress.Right, "change", step => Change(Here.Step(settings.Now, step)))] : Array.Empty<PageKey>(),
        .. Here.IsTyped
            ? [PageKey.On(KeyPress.Enter, "type", () => _typed = Here.Edit(settings.Now)), PageKey.Digits(0, 9, "type", digit => _typed = $"{digit}").InHelpAlone]
            : new[] { PageKey.On(KeyPress.Enter, "change", () => Change(Here.Step(settings.Now, 1))).Or(KeyPress.Space).InHelpAlone },
        PageKey.On(KeyPress.Esc, "back", frame.Close),
        PageKey.On('u', "default", () => Change(Here.Reset(settings.Now))),
        PageKey.On('p', "play", Play),
        PageKey.Steps(KeyPress.PageUp, KeyPress.PageDown, "next group", step => _at = NextTable(step > 0)).InHelpAlone,
        PageKey.Steps(KeyPress.Home, KeyPress.End, "first, last", step => _at = step < 0 ? 0 : s_all.Length - 1).InHelpAlone,
    ];

    private void Take(string typed)
    {
        if (Here.Type(settings.Now, typed).TryGet(out PlayerSettings? changed, out Fault? fault))
        {
            _typed = null;
            Change(changed);
            return;
        }

        _notice = fault.Message;
    }

    private void Change(PlayerSettings changed)
    {
        if (Here.Write(changed) != Here.Write(settings.Now))
        {
            _notice = settings.Change(Here, changed)?.Message;
        }
    }

    private void Play()
    {
        settle();
        DrillVoicing example = desk.Shelf.Drills[0].Voicings[0];
        desk.Sound.Play(Perform.Strum(example.Voicing, StrumDirection.Down, desk.Settings.Style));
        _notice = desk.Sound.Notice;
    }

    private int NextTable(bool isDown)
    {
        string[] starts = [.. SettingList.Tables.Select(table => table.Table)];
        int table = Math.Clamp(Array.IndexOf(starts, Here.Table) + (isDown ? 1 : -1), 0, starts.Length - 1);
        return s_all.IndexOf(s_all.First(setting => setting.Table == starts[table]));
    }

    private IEnumerable<Line> Rows(string table, string heading, int width) => s_all.Where(setting => setting.Table == table)
        .Select(setting => Row(setting, width)).Prepend(Line.Of(heading, Tone.Held));

    private Line Row(Setting setting, int width)
    {
        bool isHere = setting == Here;
        Line title = Line.Of(Mark(isHere), Tone.Key).And(setting.Title.PadRight(TitleWidth), isHere ? Tone.Strong : Tone.Plain);
        int room = width - title.Width - 4;
        if (isHere && _typed is not null)
        {
            return title.And(" ").And(_typed.Length > room ? _typed[^room..] : _typed, Tone.Strong).And("_", Tone.Cursor);
        }

        string value = setting.Show(settings.Now);
        // Of a long path the end tells most.
        string shown = value.Length > room ? $"...{value[^(room - 3)..]}" : value;
        return isHere ? title.And($" {shown} ", Tone.Cursor) : title.And($" {shown}", setting.Write(settings.Now) == setting.Write(PlayerSettings.Usual) ? Tone.Plain : Tone.Strong);
    }

    private IEnumerable<Line> About(int width)
    {
        Line[] about = [.. Line.Wrap(Here.About, width).Take(AboutRows)];
        string usual = $"default {Here.Show(PlayerSettings.Usual)}   {Here.Key} in settings.toml";
        return [.. about, .. Enumerable.Repeat(Line.Empty, AboutRows - about.Length), Line.Of(usual, Tone.Quiet)];
    }

    private IEnumerable<Line> Notices(int width)
    {
        string? words = _notice ?? settings.FaultsInShort;
        return words is null ? [] : Line.Wrap(words, width, Tone.Wrong).Take(NoticeRows);
    }

    private static string Mark(bool isHere) => isHere ? " > " : "   ";
}
