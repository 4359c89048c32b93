using System.Collections.Immutable;
using Clampwise.Charts;
using Clampwise.Look;
using Clampwise.Practice;
using Clampwise.Sound.Performing;
using Clampwise.Sound.Players;
using Clampwise.Storage;
using Clampwise.Theory;

namespace Clampwise.Screens;

/// <summary>What the pages work with: the drills, the log and what is remembered from it, the sound, the clock.</summary>
internal sealed class Desk
{
    private readonly Func<Guid> _newId;
    private readonly Func<int> _newSeed;
    private Repertoire _everything;

    /// <summary>A desk with what the log says of the player.</summary>
    public Desk(IEnumerable<Drill> drills, IAttemptLog log, MemoryState remembered, ISoundOut sound, DeskSettings settings, TimeProvider time, Func<Guid> newId, Func<int> newSeed)
    {
        Drills = [.. drills];
        _everything = Repertoire.Of(Drills);
        Log = log;
        Sound = sound;
        Settings = settings;
        Time = time;
        _newId = newId;
        _newSeed = newSeed;
        Remembered = remembered;
        Repertoire = Repertoire.Of(DrillPath.Open(Drills, Remembered, settings.Clamps));
    }

    /// <summary>All drills at hand.</summary>
    public ImmutableArray<Drill> Drills { get; private set; }

    /// <summary>Where drills of the player's own are kept; null if nowhere.</summary>
    public DataFolder? Folder { get; init; }

    /// <summary>What can be asked: the drills that are open to the player.</summary>
    public Repertoire Repertoire { get; private set; }

    public IAttemptLog Log { get; }

    public ISoundOut Sound { get; private set; }

    public DeskSettings Settings { get; private set; }

    public TimeProvider Time { get; }

    /// <summary>What is known of the player.</summary>
    public MemoryState Remembered { get; private set; }

    /// <summary>A session that was put down and can be taken up again; null if there is none.</summary>
    public SessionState? Resting { get; private set; }

    /// <summary>The same if it has time and questions left, so that something would be lost by ending it.</summary>
    public SessionState? Waiting => Resting is { } session && HasMore(session) ? session : null;

    public GlyphSet Glyphs => Settings.Glyphs;

    public Moment Now => Moment.Now(Time);

    public PracticeDay Today => Settings.Calendar.DayOf(Time.GetUtcNow());

    /// <summary>Alternatives may come from drills that are not open yet.</summary>
    public SessionWorld World => new(_everything, Settings.Calendar, Settings.Questions);

    /// <summary>
    /// A fretboard the way the player has set it, as large as the room allows; one that would stand lies down if it is higher than that.
    /// Nothing on it gives a name away: its dots are plain or bear finger numbers, and plain ones while it is built under a cursor.
    /// </summary>
    public IReadOnlyList<Line> Draw(FretboardPicture picture, int width, int height) =>
        DrawTelling(picture, width, height, Settings.Dots == DotSign.Fingers && picture.Cursor is null ? DotSign.Fingers : DotSign.Dots);

    /// <summary>The same where nothing is asked, or it is answered: with any sign on the dots.</summary>
    public IReadOnlyList<Line> DrawTelling(FretboardPicture picture, int width, int height, DotSign? sign = null) =>
        FretboardDrawing.Draw(Signed(picture, sign), Glyphs, width, height, Settings.Fretboard).OnScreen();

    /// <summary>How many frets <see cref="DrawTelling"/> shows.</summary>
    public int FretsShown(FretboardPicture picture, int width, int height, DotSign sign) =>
        FretboardDrawing.FretsShown(Signed(picture, sign), width, height, Settings.Fretboard);

    /// <summary>Takes over changed settings.</summary>
    public void Use(DeskSettings settings)
    {
        Settings = settings;
        Learn(Remembered);
    }

    /// <summary>Plays through another device from now on.</summary>
    public void Hear(ISoundOut sound) => Sound = sound;

    /// <summary>A seed for some chance of its own.</summary>
    public int NewSeed() => _newSeed();

    /// <summary>When it is, with a fresh identity.</summary>
    public Stamp Stamp() => new(Now, new EntryId(_newId()));

    /// <summary>What a session is planned from now.</summary>
    public PlanRequest Request() => new(Repertoire, Remembered, Today, _newSeed()) { Length = Settings.SessionLength, CanListen = Sound.IsAudible };

    /// <summary>A planned session, ready to begin. One that waits is ended, with its answers kept: ask first (<see cref="Waiting"/>).</summary>
    public SessionState Start(SessionPlan plan)
    {
        EndResting();
        return SessionState.Of(plan, new SessionId(_newId()), Remembered, _newSeed(), Sound.IsAudible);
    }

    /// <summary>Takes over what a session has learned of the player.</summary>
    public void Learn(MemoryState memory)
    {
        Remembered = memory;
        Repertoire = Repertoire.Of(DrillPath.Open(Drills, memory, Settings.Clamps));
    }

    /// <summary>Puts a session down, or with null clears the place.</summary>
    public void Rest(SessionState? session) => Resting = session;

    /// <summary>Keeps a voicing in the player's own drill of its setup, and says what came of it.</summary>
    public string Keep(Fretboard.Voicing voicing)
    {
        if (Folder is null)
        {
            return "Nothing can be kept: there is no data folder.";
        }

        Drill drill = OwnDrill.With(Drills, voicing);
        if (DrillLibrary.Save(Folder, new DrillSheet(drill, OwnDrill.Order, DrillOrigin.Own), mayReplace: true) is { } fault)
        {
            return fault.ToString();
        }

        Drills = [.. Drills.Where(known => known.Id != drill.Id), drill];
        _everything = Repertoire.Of(Drills);
        Learn(Remembered);
        return $"Kept in the drill '{drill.Id}': {drill.Voicings.Length} {(drill.Voicings.Length == 1 ? "voicing" : "voicings")}.";
    }

    /// <summary>
    /// Keeps the session that was put down for the next start. One with no time or no question left is ended instead, so that its
    /// length stands in the log.
    /// </summary>
    /// <returns>Why it could not be kept; null if all went well.</returns>
    public Fault? Close()
    {
        if (Folder is not { } folder)
        {
            return null;
        }

        if (Waiting is { } session)
        {
            return SessionFile.Save(folder, SessionSnapshot.Of(session, Now, Settings.Calendar));
        }

        SessionFile.Forget(folder);
        return EndResting();
    }

    /// <summary>Brings back the session that was kept, if it is of today and has something left: else a new plan serves better.</summary>
    public void TakeUpKept()
    {
        if (Folder is { } folder && SessionFile.Load(folder) is { } kept && kept.Day == Today)
        {
            SessionState session = kept.Restore(_everything, Remembered, LogReading.Attempts(Log.ReadAll()), Sound.IsAudible);
            Resting = HasMore(session) ? session : null;
        }
    }

    private FretboardPicture Signed(FretboardPicture picture, DotSign? sign) => DotSigns.On(picture, sign ?? Settings.Dots, Settings.Questions.Hand);

    private Fault? EndResting()
    {
        Fault? fault = null;
        if (Resting is { } over)
        {
            foreach (SessionEffect.Store store in Practice.Session.Step(over, new SessionEvent.CutShort(Stamp()), World).Effects.OfType<SessionEffect.Store>())
            {
                fault = Log.Append(store.Entry) ?? fault;
            }
        }

        Resting = null;
        return fault;
    }

    private bool HasMore(SessionState session) =>
        !(session.LeftAt(Now) <= TimeSpan.Zero) && (session.Phase == SessionPhase.Asking || session.Queue.Length + session.Close.Length > 0);
}

/// <summary>What the player has set.</summary>
/// <param name="Glyphs">The characters of drawings.</param>
/// <param name="Calendar">Time zone and start of the practice day.</param>
/// <param name="Memory">Settings of the memory model.</param>
internal sealed record DeskSettings(GlyphSet Glyphs, PracticeCalendar Calendar, FsrsSettings Memory)
{
    /// <summary>How long the daily session lasts.</summary>
    public TimeSpan SessionLength { get; init; } = PlanRequest.UsualLength;

    /// <summary>How questions are put.</summary>
    public QuestionOptions Questions { get; init; } = new(OffersNames: true);

    /// <summary>The clamps that the player owns: no other is asked for.</summary>
    public OwnClamps Clamps { get; init; }

    /// <summary>How voicings are played.</summary>
    public PlayingStyle Style { get; init; } = PlayingStyle.Standard;

    /// <summary>How fretboards lie.</summary>
    public FretboardStyle Fretboard { get; init; } = FretboardStyle.Usual;

    /// <summary>What stands where fingers are.</summary>
    public DotSign Dots { get; init; } = DotSign.Dots;
}
