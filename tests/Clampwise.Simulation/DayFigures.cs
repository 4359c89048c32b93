namespace Clampwise.Simulation;

/// <summary>What is true in the evening of one day, before its session.</summary>
/// <param name="All">Mean true recall of everything.</param>
/// <param name="Opened">Mean true recall of what was asked at least once.</param>
/// <param name="Shapes">Shapes truly recalled, as a sum over the mean of their directions.</param>
/// <param name="Questions">Questions of the session.</param>
/// <param name="Minutes">Minutes of the session with cards and moving the clamp.</param>
/// <param name="OnKnown">Minutes spent on what was truly recalled with 95 % or more.</param>
public sealed record DayFigures(double All, double Opened, double Shapes, int Questions, double Minutes, double OnKnown);
