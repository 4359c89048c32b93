namespace Clampwise.Storage;

/// <summary>The keys of a drill file.</summary>
internal static class DrillKeys
{
    public const string Title = "title";
    public const string Setup = "setup";
    public const string Order = "order";
    public const string Note = "note";
    public const string Directions = "directions";
    public const string Voicing = "voicing";
    public const string Fretting = "fretting";
    public const string Behind = "behind";
}
