using Clampwise.Practice;

namespace Clampwise.Storage;

/// <summary>Which fields an entry of each kind has. What has its usual value is left out.</summary>
internal static class EntryWriter
{
    public static void Write(IFieldWriter to, LogEntry entry)
    {
        to.Whole(Fields.Version, entry.Schema);
        to.Code(Fields.Kind, EntryKinds.CodeOf(entry));
        to.Id(Fields.Id, entry.Id.Value);
        to.Time(Fields.At, entry.At);
        switch (entry)
        {
            case Attempt attempt:
                WriteAttempt(to, attempt);
                break;
            case GradeOverruled overruled:
                to.Id(Fields.Attempt, overruled.Attempt.Value);
                to.Code(Fields.Grade, Codes<Grade>.Of(overruled.Grade));
                break;
            case AttemptWithdrawn withdrawn:
                to.Id(Fields.Attempt, withdrawn.Attempt.Value);
                break;
            case QuestionSkipped skipped:
                to.Text(Fields.Item, skipped.Item.ToString());
                to.Id(Fields.Session, skipped.Session.Value);
                to.Code(Fields.Reason, Codes<SkipReason>.Of(skipped.Reason));
                break;
            case SessionEnded ended:
                WriteSession(to, ended);
                break;
            case WeightsChosen chosen:
                to.Reals(Fields.Weights, chosen.Weights.IsDefault ? [] : chosen.Weights);
                to.Text(Fields.Why, chosen.Why);
                break;
            case TuningHeard heard:
                Text(to, Fields.Setup, heard.Setup);
                to.Whole(Fields.String, heard.String.Number);
                to.Real(Fields.Cents, heard.Cents);
                to.Flag(Fields.StringRight, heard.IsStringRight);
                to.Flag(Fields.Right, heard.IsAllRight);
                break;
        }
    }

    private static void WriteSession(IFieldWriter to, SessionEnded ended)
    {
        to.Id(Fields.Session, ended.Session.Value);
        to.Code(Fields.Way, Codes<SessionKind>.Of(ended.Kind));
        to.Day(Fields.Day, ended.Day);
        to.Span(Fields.Practised, ended.Practised);
        Flag(to, Fields.CutShort, ended.WasCutShort);
    }

    private static void WriteAttempt(IFieldWriter to, Attempt attempt)
    {
        to.Span(Fields.Shown, attempt.At - attempt.AskedAt);
        to.Text(Fields.Item, attempt.Item.ToString());
        Text(to, Fields.Drill, attempt.Drill == default ? "" : attempt.Drill.ToString());
        to.Id(Fields.Session, attempt.Session.Value);
        to.Day(Fields.Day, attempt.Day);
        to.Code(Fields.Grade, Codes<Grade>.Of(attempt.Grade));
        to.Flag(Fields.Right, attempt.IsCorrect);
        Text(to, Fields.Setup, attempt.Setup);
        Text(to, Fields.Answer, attempt.Answer);
        Text(to, Fields.Expected, attempt.Expected);
        Flag(to, Fields.Unknown, attempt.DidNotKnow);
        Text(to, Fields.ConfusedWith, attempt.ConfusedWith?.ToString() ?? "");
        Text(to, Fields.Partner, attempt.Partner?.ToString() ?? "");
        Count(to, Fields.Hints, attempt.Hints);
        to.Span(Fields.Thinking, attempt.Thinking);
        Flag(to, Fields.Primed, attempt.IsPrimed);
        Count(to, Fields.Choices, attempt.Choices);
        if (attempt.Family != default)
        {
            to.Code(Fields.Family, Codes<ChordFamily>.Of(attempt.Family));
        }

        if (attempt.Foreseen is { } foreseen && double.IsFinite(foreseen))
        {
            to.Real(Fields.Foreseen, foreseen);
        }
    }

    private static void Text(IFieldWriter to, Field field, string value)
    {
        if (value.Length > 0)
        {
            to.Text(field, value);
        }
    }

    private static void Flag(IFieldWriter to, Field field, bool value)
    {
        if (value)
        {
            to.Flag(field, value);
        }
    }

    private static void Count(IFieldWriter to, Field field, int value)
    {
        if (value != 0)
        {
            to.Whole(field, value);
        }
    }
}
