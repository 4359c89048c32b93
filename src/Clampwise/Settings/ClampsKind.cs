using Clampwise.Practice;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>The clamps that a player owns, as a list of how many strings each holds.</summary>
internal sealed class ClampsKind : SettingKind<OwnClamps>
{
    private static readonly OwnClamps[] s_usual = [OwnClamps.Any, OwnClamps.Of(3), OwnClamps.Of(4), OwnClamps.Of(5), OwnClamps.Of(3, 5), OwnClamps.Of(3, 4, 5)];

    public override string Expected => "a list of how many strings each clamp holds, such as \"3\" or \"3, 5\"; \"\" for whatever a drill asks for";

    public override string ExpectedTyped => "how many strings each clamp holds, such as 3 or 3, 5; nothing for whatever a drill asks for";

    public override Result<OwnClamps> Read(TomlValue value) => value switch
    {
        TomlValue.Text { Value: var text } => ReadText(text),
        TomlValue.Whole whole => ReadText($"{whole.Value}"),
        _ => Wrong(value.Written),
    };

    public override Result<OwnClamps> Type(string text) => OwnClamps.Parse(text).TryGet(out OwnClamps own, out _) ? own : WrongTyped(text);

    public override string Write(OwnClamps value) => TomlText.Quote($"{value}");

    public override string Show(OwnClamps value) => value == OwnClamps.Any ? "whatever a drill asks for" : $"over {value} strings";

    public override string Edit(OwnClamps value) => $"{value}";

    // Round and round the usual ones; a list typed otherwise begins anew.
    public override OwnClamps Step(OwnClamps value, int by)
    {
        int at = Array.IndexOf(s_usual, value);
        return at < 0 ? OwnClamps.Any : s_usual[(at + by + s_usual.Length) % s_usual.Length];
    }
}
