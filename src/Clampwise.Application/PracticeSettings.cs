using Clampwise.Fretboard;
using Clampwise.Practice;
using Clampwise.Sound.Performing;

namespace Clampwise.Application;

/// <summary>What a player has set that matters to practice, whatever face of the program it is done with. The values of a new installation unless set otherwise.</summary>
public record PracticeSettings
{
    /// <summary>How long the daily drill lasts.</summary>
    public TimeSpan SessionLength { get; init; } = PlanRequest.UsualLength;

    /// <summary>True if names are picked from choices, false if they are typed.</summary>
    public bool OffersNames { get; init; } = true;

    /// <summary>True with the guitar in hand: one setup at a time, and names are played. False if shapes are placed on the screen.</summary>
    public bool HasGuitar { get; init; } = true;

    /// <summary>When a practice day begins.</summary>
    public TimeOnly DayStart { get; init; } = PracticeCalendar.UsualDayStart;

    /// <summary>What is set of the memory model.</summary>
    public FsrsSettings Memory { get; init; } = FsrsSettings.Usual;

    /// <summary>The fretting hand.</summary>
    public Hand Hand { get; init; } = Hand.Medium;

    /// <summary>The clamps that the player owns: no other is asked for.</summary>
    public OwnClamps Clamps { get; init; }

    /// <summary>How voicings are played.</summary>
    public PlayingStyle Style { get; init; } = PlayingStyle.Standard;

    /// <summary>How questions are put.</summary>
    public QuestionOptions Questions => new(OffersNames) { Hand = Hand, HasGuitar = HasGuitar };
}
