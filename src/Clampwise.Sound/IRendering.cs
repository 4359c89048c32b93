namespace Clampwise.Sound;

/// <summary>
/// A performance on its way to samples. What is read does not depend on how much is read at a time, so that live playing and offline
/// rendering give the same samples. Reading allocates nothing. Not safe for use by two threads at once.
/// </summary>
public interface IRendering
{
    /// <summary>Frames from the first to the last, with the last note's dying away.</summary>
    long FrameCount { get; }

    /// <summary>Fills the span with interleaved stereo (left, right), each within -1 to 1, and returns how many frames were filled: fewer than asked for only at the end.</summary>
    int Read(Span<float> stereo);
}
