using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>Yes or no.</summary>
internal sealed class FlagKind : SettingKind<bool>
{
    public override string Expected => "true or false";

    public override bool IsTyped => false;

    public override Result<bool> Read(TomlValue value) => value is TomlValue.Flag flag ? flag.Value : Wrong(value.Written);

    public override Result<bool> Type(string text) => bool.TryParse(text, out bool value) ? value : Wrong(text);

    public override string Write(bool value) => value ? "true" : "false";

    public override string Show(bool value) => value ? "yes" : "no";

    public override bool Step(bool value, int by) => !value;
}
