using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>What values a setting takes: how they are read from a file and from the keyboard, written, shown, and stepped through.</summary>
internal abstract class SettingKind<T> where T : notnull
{
    /// <summary>What is right, to follow 'takes': 'a whole number from 1 to 120'.</summary>
    public abstract string Expected { get; }

    /// <summary>What is right where it is typed by itself, without the quotes of a file.</summary>
    public virtual string ExpectedTyped => Expected;

    /// <summary>True if a value can be typed as well as stepped to.</summary>
    public virtual bool IsTyped => true;

    /// <summary>True if there is a next value.</summary>
    public virtual bool IsStepped => true;

    /// <summary>The value of a TOML value; a fault if it is of another type or out of range.</summary>
    public abstract Result<T> Read(TomlValue value);

    /// <summary>The value of what a player typed.</summary>
    public abstract Result<T> Type(string text);

    /// <summary>The value in TOML.</summary>
    public abstract string Write(T value);

    /// <summary>The value as a player reads it.</summary>
    public virtual string Show(T value) => Write(value);

    /// <summary>What is there to change when it is typed: the value without its unit.</summary>
    public virtual string Edit(T value) => Write(value);

    /// <summary>The next value up (1) or down (-1); the same at the end of the range.</summary>
    public abstract T Step(T value, int by);

    /// <summary>A fault that says what was found in a file and what would be right.</summary>
    protected Fault Wrong(string found) => SettingsWords.Wrong(Expected, found);

    /// <summary>A fault that says what was typed and what would be right.</summary>
    protected Fault WrongTyped(string found) => SettingsWords.Wrong(ExpectedTyped, found.Trim().Length == 0 ? "nothing" : found.Trim());

    /// <summary>The value of a TOML string that holds what could be typed.</summary>
    protected Result<T> ReadText(string text) => Type(text).TryGet(out T? value, out _) ? value : Wrong(TomlText.Quote(text));
}
