using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Settings;

/// <summary>One thing that a player can set.</summary>
/// <param name="Key">Its full key in the file, such as <c>session.minutes</c>.</param>
/// <param name="Title">Its name on the screen.</param>
/// <param name="About">What it does, in one line.</param>
internal abstract record Setting(string Key, string Title, string About)
{
    /// <summary>The table that it stands in.</summary>
    public string Table => Key[..Key.IndexOf('.', StringComparison.Ordinal)];

    /// <summary>Its key in that table.</summary>
    public string Name => Key[(Table.Length + 1)..];

    /// <summary>What is right, to follow 'takes'.</summary>
    public abstract string Expected { get; }

    /// <summary>True if a value can be typed as well as stepped to.</summary>
    public abstract bool IsTyped { get; }

    /// <summary>True if there is a next value to step to.</summary>
    public abstract bool IsStepped { get; }

    /// <summary>The value as a player reads it.</summary>
    public abstract string Show(PlayerSettings settings);

    /// <summary>The value in TOML.</summary>
    public abstract string Write(PlayerSettings settings);

    /// <summary>The value to start typing from.</summary>
    public abstract string Edit(PlayerSettings settings);

    /// <summary>The settings with a value from a file.</summary>
    public abstract Result<PlayerSettings> Read(PlayerSettings settings, TomlValue value);

    /// <summary>The settings with a value that was typed.</summary>
    public abstract Result<PlayerSettings> Type(PlayerSettings settings, string text);

    /// <summary>The settings with the next value up (1) or down (-1).</summary>
    public abstract PlayerSettings Step(PlayerSettings settings, int by);

    /// <summary>The settings with the value of a new installation.</summary>
    public abstract PlayerSettings Reset(PlayerSettings settings);
}

/// <summary>A setting with values of a type.</summary>
internal sealed record Setting<T>(string Key, string Title, string About, SettingKind<T> Kind, Func<PlayerSettings, T> Get, Func<PlayerSettings, T, PlayerSettings> Set)
    : Setting(Key, Title, About) where T : notnull
{
    public override string Expected => Kind.Expected;

    public override bool IsTyped => Kind.IsTyped;

    public override bool IsStepped => Kind.IsStepped;

    public override string Show(PlayerSettings settings) => Kind.Show(Get(settings));

    public override string Write(PlayerSettings settings) => Kind.Write(Get(settings));

    public override string Edit(PlayerSettings settings) => Kind.Edit(Get(settings));

    public override Result<PlayerSettings> Read(PlayerSettings settings, TomlValue value) => Kind.Read(value).Select(read => Set(settings, read));

    public override Result<PlayerSettings> Type(PlayerSettings settings, string text) => Kind.Type(text).Select(read => Set(settings, read));

    public override PlayerSettings Step(PlayerSettings settings, int by) => Set(settings, Kind.Step(Get(settings), by));

    public override PlayerSettings Reset(PlayerSettings settings) => Set(settings, Get(PlayerSettings.Usual));
}
