using Clampwise.Fretboard;

namespace Clampwise.Practice.Tests;

/// <summary>The names that drills hold, looked up once.</summary>
internal sealed class HeldNames
{
    private readonly Dictionary<string, Dictionary<ShapeKey, (string Shape, string Sounding)>> _bySetup;
    private readonly HashSet<string> _shapes;
    private readonly HashSet<string> _sounding;

    public HeldNames(Repertoire drills)
    {
        DrillVoicing[] all = [.. drills.Drills.SelectMany(drill => drill.Voicings)];
        _bySetup = all.GroupBy(voicing => $"{voicing.Voicing.Setup}").ToDictionary(
            setup => setup.Key,
            setup => setup.DistinctBy(voicing => voicing.Key).ToDictionary(voicing => voicing.Key, voicing => (voicing.Voicing.ShapeName, voicing.Voicing.SoundingName)));
        _shapes = [.. all.Select(voicing => voicing.Voicing.ShapeName)];
        _sounding = [.. all.Select(voicing => voicing.Voicing.SoundingName)];
    }

    /// <summary>Every shape of a setup with its two names.</summary>
    public IReadOnlyDictionary<ShapeKey, (string Shape, string Sounding)> In(Setup setup) => _bySetup[$"{setup}"];

    /// <summary>All names of one side.</summary>
    public IReadOnlySet<string> Side(bool isShapeName) => isShapeName ? _shapes : _sounding;
}
