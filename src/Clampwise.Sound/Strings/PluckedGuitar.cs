using Clampwise.Fretboard;
using Clampwise.Theory;

namespace Clampwise.Sound.Strings;

/// <summary>The steel-string guitar that is computed: nothing to install.</summary>
public sealed class PluckedGuitar : IInstrument
{
    private const int LowE = 40;

    /// <inheritdoc/>
    public string Name => "computed steel-string guitar";

    /// <inheritdoc/>
    public IRendering Start(Performance performance, SampleRate rate) => new PluckedRendering(performance, rate);

    /// <summary>Renders a note to nowhere, so that the first one to be heard finds everything compiled. For a background thread.</summary>
    public void WarmUp(SampleRate rate)
    {
        var note = new PlayedNote(StringNumber.Of(6), Pitch.FromMidi(LowE), Fret.Nut, Contact.Nut, TimeSpan.Zero, TimeSpan.FromMilliseconds(1));
        IRendering rendering = Start(Performance.Of([note], 6), rate);
        rendering.Read(new float[2 * rate.FrameAt(TimeSpan.FromMilliseconds(20))]);
    }
}
