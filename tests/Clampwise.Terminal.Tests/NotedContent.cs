using System.Runtime.CompilerServices;

namespace Clampwise.Terminal.Tests;

/// <summary>Content that shows one line and notes down the keys that it hears. What the library keeps is one a process: tests with it do not run side by side.</summary>
internal sealed class NotedContent : IScreenContent
{
    public List<KeyPress> Pressed { get; } = [];

    public bool IsInSixteen => false;

    public void Appear(IScreen screen)
    {
    }

    public IReadOnlyList<IReadOnlyList<StyledText>> Compose(int columns, int rows) => [[new StyledText("content".PadRight(columns), default)]];

    public void Press(KeyPress key) => Pressed.Add(key);

    public bool Tick() => false;

    public void Attend(bool isAttending)
    {
    }

    public void CloseAll()
    {
    }

    [ModuleInitializer]
    internal static void KeepOffTheRealTerminal() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
}
