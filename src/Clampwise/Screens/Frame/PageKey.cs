using System.Collections.Immutable;
using Clampwise.Terminal;

namespace Clampwise.Screens;

/// <summary>
/// A key of a page, or several that do one thing: what they are called, what they do in words, and what happens. The page's presses,
/// its key line and its help all go by it.
/// </summary>
/// <param name="Label">What the key line calls it.</param>
/// <param name="Does">What it does, in few words.</param>
/// <param name="Presses">The presses that it takes.</param>
/// <param name="Act">What happens; told which press it was.</param>
internal sealed record PageKey(string Label, string Does, ImmutableArray<KeyPress> Presses, Action<KeyPress> Act)
{
    private const int MostNames = 4;

    /// <summary>False for a key that the key line leaves to the help.</summary>
    public bool IsOnLine { get; init; } = true;

    /// <summary>True if every key that no other line of the table takes does the same.</summary>
    public bool TakesAny { get; init; }

    /// <summary>True if whatever types text belongs to it.</summary>
    public bool TakesText { get; init; }

    /// <summary>All its presses by name, for help; the label where they are many.</summary>
    public string Names
    {
        get
        {
            string[] names = [.. Presses.Select(NameOf).Distinct()];
            return (names.Length is > 0 and <= MostNames ? string.Join(' ', names) : Label) + (TakesAny ? " or any other" : "");
        }
    }

    /// <summary>The same without a place on the key line.</summary>
    public PageKey InHelpAlone => this with { IsOnLine = false };

    /// <summary>The same by further presses.</summary>
    public PageKey Or(params ReadOnlySpan<KeyPress> more) => this with { Presses = Presses.AddRange(more) };

    /// <summary>The same by a further letter, small or capital.</summary>
    public PageKey Or(char letter) => Or(Both(letter));

    /// <summary>Whether a press is its own.</summary>
    public bool Takes(KeyPress press) => Presses.Contains(press) || (TakesText && press.Text.Length > 0);

    /// <summary>A named key, or a character as it stands.</summary>
    public static PageKey On(KeyPress press, string does, Action act) => new(NameOf(press), does, [press], _ => act());

    /// <summary>A letter, small or capital.</summary>
    public static PageKey On(char letter, string does, Action act) => new($"{letter}", does, [.. Both(letter)], _ => act());

    /// <summary>Two keys that go opposite ways: told -1 for the first and 1 for the second.</summary>
    public static PageKey Steps(KeyPress back, KeyPress on, string does, Action<int> step) =>
        new($"{NameOf(back)} {NameOf(on)}", does, [back, on], press => step(press == back ? -1 : 1));

    /// <summary>The digits from one to another, 0 to 9: told which.</summary>
    public static PageKey Digits(int first, int last, string does, Action<int> act) =>
        new($"{first}-{last}", does, [.. Enumerable.Range(first, last - first + 1).Select(digit => KeyPress.Of((char)('0' + digit)))], press => act(press.Sign - '0'));

    /// <summary>The lines of a list or a text further up or down: one by one, and ten by ten with the page keys.</summary>
    public static PageKey Scroll(Action<int> by) => new("Up Down", "scroll", [KeyPress.Up, KeyPress.Down, KeyPress.PageUp, KeyPress.PageDown], press =>
        by(press == KeyPress.Up ? -1 : press == KeyPress.Down ? 1 : press == KeyPress.PageUp ? -10 : 10));

    private static KeyPress[] Both(char letter) => [KeyPress.Of(letter), KeyPress.Of(char.ToUpperInvariant(letter))];

    private static string NameOf(KeyPress press) => press == KeyPress.Space ? "Space" : press.Name switch
    {
        NamedKey.PageUp => "PgUp",
        NamedKey.PageDown => "PgDn",
        _ => press.Sign != '\0' ? char.ToLowerInvariant(press.Sign).ToString() : press.ToString(),
    };
}
