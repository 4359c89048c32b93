namespace Clampwise.Sound.Strings;

/// <summary>The steel-string guitar that is computed: nothing to install.</summary>
public sealed class PluckedGuitar : IInstrument
{
    /// <inheritdoc/>
    public string Name => "computed steel-string guitar";

    /// <inheritdoc/>
    public IRendering Start(Performance performance, SampleRate rate) => new PluckedRendering(performance, rate);
}
