namespace Clampwise.Storage;

/// <summary>One field of a log entry in files. Names never change and are never used again for something else.</summary>
/// <param name="Name">Its name in JSON and in spreadsheets.</param>
/// <param name="Short">Its name in the database, where every letter counts two hundred thousand times.</param>
/// <param name="Least">The least that it may hold: a number, milliseconds, a year, or characters of a text.</param>
/// <param name="Most">The most that it may hold.</param>
internal sealed record Field(string Name, string Short, double Least, double Most)
{
    /// <summary>The name as JSON wants it, encoded once.</summary>
    public System.Text.Json.JsonEncodedText Encoded { get; } = System.Text.Json.JsonEncodedText.Encode(Name);

    /// <summary>True for a value within the bounds.</summary>
    public bool Allows(double value) => value >= Least && value <= Most;
}
