using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>A text of one line; an empty one stands for something of its own.</summary>
/// <param name="whenEmpty">What an empty text means, for the player.</param>
internal sealed class TextKind(string whenEmpty) : SettingKind<string>
{
    public override string Expected => $"a text of one line in quotes; \"\" for {whenEmpty}";

    public override string ExpectedTyped => $"a text of one line; nothing for {whenEmpty}";

    public override bool IsStepped => false;

    public override Result<string> Read(TomlValue value) => value is TomlValue.Text { Value: var text } ? ReadText(text) : Wrong(value.Written);

    public override Result<string> Type(string text) => text.Any(char.IsControl) ? WrongTyped(text) : text.Trim();

    public override string Write(string value) => TomlText.Quote(value);

    public override string Show(string value) => value.Length == 0 ? whenEmpty : value;

    public override string Edit(string value) => value;

    public override string Step(string value, int by) => value;
}
