namespace Clampwise.Practice;

/// <summary>The state of one memory in the model FSRS-6.</summary>
/// <param name="Stability">Days after which the chance of recall has fallen to 90 %; .001 to 36500.</param>
/// <param name="Difficulty">How hard it is to make it more stable; 1 to 10.</param>
public readonly record struct Memory(double Stability, double Difficulty);
