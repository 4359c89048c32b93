using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>One of a few words.</summary>
internal sealed class ChoiceKind<T>(params (string Word, T Value)[] choices) : SettingKind<T> where T : notnull
{
    public override string Expected => $"one of {string.Join(", ", choices.Select(choice => TomlText.Quote(choice.Word)))}";

    public override bool IsTyped => false;

    public override Result<T> Read(TomlValue value) => value is TomlValue.Text { Value: var word } ? Type(word) : Wrong(value.Written);

    public override Result<T> Type(string text)
    {
        int index = Array.FindIndex(choices, choice => choice.Word == text);
        return index >= 0 ? choices[index].Value : Wrong(TomlText.Quote(text));
    }

    public override string Write(T value) => TomlText.Quote(Show(value));

    public override string Show(T value) => choices[IndexOf(value)].Word;

    // Round and round: with one hand free nobody should have to turn back.
    public override T Step(T value, int by) => choices[(IndexOf(value) + by + choices.Length) % choices.Length].Value;

    private int IndexOf(T value) => Array.FindIndex(choices, choice => choice.Value.Equals(value));
}
