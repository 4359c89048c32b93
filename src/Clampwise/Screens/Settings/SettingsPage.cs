using System.Collections.Immutable;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Settings;
using Clampwise.Sound.Performing;
using Clampwise.Terminal;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>All settings in a list: arrows change the one under the cursor, and it is saved at once.</summary>
/// <param name="shell">The frame.</param>
/// <param name="desk">What plays an example.</param>
/// <param name="settings">The settings and their file.</param>
/// <param name="settle">Puts to work what takes its time: called before an example sounds and when the page is left.</param>
internal sealed class SettingsPage(Shell shell, ScreenDesk desk, SettingsKeeper settings, Action settle) : Page
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

    public override IReadOnlyList<(string Key, string Does)> Keys => IsTyping
        ? [("Enter", "take it"), ("Esc", "leave it as it was")]
        : [("Up Down", "choose"), .. Here.IsStepped ? new[] { ("Left Right", "change") } : [], .. Here.IsTyped ? new[] { ("Enter", "type") } : [], ("Esc", "back"), ("u", "default"), ("p", "play"), ("?", "help")];

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

    public override bool Press(KeyPress key)
    {
        _notice = null;
        return IsTyping ? PressTyping(key) : PressList(key);
    }

    public override void Leave() => settle();

    private bool PressList(KeyPress key)
    {
        if (key == KeyPress.Up || key == KeyPress.Down)
        {
            _at = Math.Clamp(_at + (key == KeyPress.Down ? 1 : -1), 0, s_all.Length - 1);
            return true;
        }

        if (key == KeyPress.PageUp || key == KeyPress.PageDown || key == KeyPress.Home || key == KeyPress.End)
        {
            _at = key == KeyPress.Home ? 0 : key == KeyPress.End ? s_all.Length - 1 : NextTable(key == KeyPress.PageDown);
            return true;
        }

        if (key == KeyPress.Left || key == KeyPress.Right || ((key == KeyPress.Enter || key == KeyPress.Space) && !Here.IsTyped))
        {
            return Change(Here.Step(settings.Now, key == KeyPress.Left ? -1 : 1));
        }

        if (key == KeyPress.Esc)
        {
            shell.Close();
            return true;
        }

        char sign = key.Sign;
        bool isDigit = Here.IsTyped && sign is >= '0' and <= '9';
        if (key == KeyPress.Enter || isDigit)
        {
            _typed = isDigit ? $"{sign}" : Here.Edit(settings.Now);
            return true;
        }

        return sign switch
        {
            'u' or 'U' => Change(Here.Reset(settings.Now)),
            'p' or 'P' => Play(),
            _ => false,
        };
    }

    private bool PressTyping(KeyPress key)
    {
        if (key == KeyPress.Esc)
        {
            _typed = null;
        }
        else if (key == KeyPress.Backspace)
        {
            _typed = _typed!.Length > 0 ? _typed[..^1] : "";
        }
        else if (key == KeyPress.Enter)
        {
            return Take(_typed!);
        }
        else
        {
            _typed += key.Text;
        }

        return true;
    }

    private bool Take(string typed)
    {
        if (Here.Type(settings.Now, typed).TryGet(out PlayerSettings? changed, out Fault? fault))
        {
            _typed = null;
            return Change(changed);
        }

        _notice = fault.Message;
        return true;
    }

    private bool Change(PlayerSettings changed)
    {
        if (Here.Write(changed) != Here.Write(settings.Now))
        {
            _notice = settings.Change(Here, changed)?.Message;
        }

        return true;
    }

    private bool Play()
    {
        settle();
        DrillVoicing example = desk.Shelf.Drills[0].Voicings[0];
        desk.Sound.Play(Perform.Strum(example.Voicing, StrumDirection.Down, desk.Settings.Style));
        _notice = desk.Sound.Notice;
        return true;
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
