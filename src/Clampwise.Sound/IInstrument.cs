using Clampwise.Theory;

namespace Clampwise.Sound;

/// <summary>A voice that can play a performance.</summary>
public interface IInstrument
{
    /// <summary>What the player calls it.</summary>
    string Name { get; }

    /// <summary>Starts a performance at frame 0; nothing is computed ahead of what is read.</summary>
    IRendering Start(Performance performance, SampleRate rate);
}
