using Clampwise.Theory;
using Tomlyn.Syntax;

namespace Clampwise.Settings;

/// <summary>What values a setting takes: how they are read from a file and from the keyboard, written, shown, and stepped through.</summary>
internal abstract class SettingKind<T> where T : notnull
{
    /// <summary>What is right, to follow 'takes': 'a whole number from 1 to 120'.</summary>
    public abstract string Expected { get; }

    /// <summary>True if a value can be typed as well as stepped to.</summary>
    public virtual bool IsTyped => true;

    /// <summary>The value of a TOML value; a fault if it is of another type or out of range.</summary>
    public abstract Result<T> Read(ValueSyntax value);

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

    /// <summary>A fault that says what was found and what would be right.</summary>
    protected Fault Wrong(string found) => SettingsWords.Wrong(Expected, found);
}
