namespace Clampwise.Practice;

/// <summary>What a skill is in: a direction as a whole, or one family of chords in it.</summary>
/// <param name="Direction">The direction.</param>
/// <param name="Family">The family; null for the direction as a whole.</param>
public readonly record struct SkillKey(Direction Direction, ChordFamily? Family);
