using Clampwise.Practice;

namespace Clampwise.Application;

/// <summary>
/// Where practice is done, whatever the face of the program: the player's record, the drills, the sound, clock and chance, the settings in
/// force, and the session that was put down.
/// </summary>
public class Desk
{
    /// <summary>A desk with nothing begun.</summary>
    public Desk(PlayerRecord record, DrillShelf shelf, SoundInUse sound, Circumstances circumstances, PracticeSettings settings)
    {
        (Record, Shelf, Sound, Circumstances, Settings) = (record, shelf, sound, circumstances, settings);
        Sessions = new SessionPlace(this);
    }

    /// <summary>The log with what it says of the player.</summary>
    public PlayerRecord Record { get; }

    /// <summary>The drills at hand.</summary>
    public DrillShelf Shelf { get; }

    /// <summary>The sound.</summary>
    public SoundInUse Sound { get; }

    /// <summary>Clock, identities and chance.</summary>
    public Circumstances Circumstances { get; }

    /// <summary>What the player has set.</summary>
    public PracticeSettings Settings { get; private set; }

    /// <summary>Where a session begins, and where one that was put down lies.</summary>
    public SessionPlace Sessions { get; }

    /// <summary>Time zone and start of the practice day.</summary>
    public PracticeCalendar Calendar => new(Circumstances.Time.LocalTimeZone, Settings.DayStart);

    /// <summary>Now.</summary>
    public Moment Now => Circumstances.Now;

    /// <summary>The practice day.</summary>
    public PracticeDay Today => Calendar.DayOf(Circumstances.Time.GetUtcNow());

    /// <summary>What can be asked: the drills that are open to the player.</summary>
    public Repertoire Repertoire => Shelf.OpenTo(Record.Memory, Settings.Clamps);

    /// <summary>Alternatives may come from drills that are not open yet.</summary>
    public SessionWorld World => new(Shelf.Everything, Calendar, Settings.Questions);

    /// <summary>When it is, with a fresh identity.</summary>
    public Stamp Stamp() => Circumstances.Stamp();

    /// <summary>What a session is planned from now.</summary>
    public PlanRequest Request() =>
        new(Repertoire, Record.Memory, Today, Circumstances.NewSeed()) { Length = Settings.SessionLength, CanListen = Sound.IsAudible, MostMoves = Settings.HasGuitar ? PlanRequest.UsualMoves : null };

    /// <summary>The drill that opens next; null if all that can be clamped are open.</summary>
    public Drill? NextDrill => DrillPath.Next(Shelf.Drills, Record.Memory, Settings.Clamps);

    /// <summary>True if nothing is due and nothing new wants to come today: at most what was just confused is left to tell apart.</summary>
    public bool IsDayDone => DailyPlanner.Plan(Request()).Items.All(planned => planned.Part == SessionPart.Contrast);

    /// <summary>The shapes of the next drill, shown first; empty if there is none.</summary>
    public SessionPlan PlanNextShapes() => NextDrill is { } next ? DailyPlanner.Plan(Request(), next) : new SessionPlan(SessionKind.Daily, [], [], null);

    /// <summary>Listening alone to what was met, for who goes on of their own accord; empty without sound.</summary>
    public SessionPlan PlanByEar() => DailyPlanner.Plan(Request() with
    {
        Repertoire = Repertoire.Of(Repertoire.Drills.Where(drill => drill.Voicings.Any(voicing => Record.Memory.Items.Keys.Any(key => key.Shape == voicing.Key)))),
        Directions = [.. Directions.All.Where(direction => direction.NeedsSound())],
        FillsTime = true,
    }) with
    { Title = "by ear" };

    /// <summary>Takes over changed settings.</summary>
    public void Use(PracticeSettings settings) => Settings = settings;
}
