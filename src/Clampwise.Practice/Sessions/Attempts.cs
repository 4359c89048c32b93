namespace Clampwise.Practice;

/// <summary>Makes the attempt that an answer is written down as.</summary>
internal static class Attempts
{
    public static Attempt Of(SessionState state, OpenQuestion open, Verdict verdict, SessionEvent.Answered answered, SessionWorld world)
    {
        PracticeItem item = open.Planned.Item;
        Moment now = answered.Stamp.Now;
        PracticeDay day = world.Calendar.DayOf(now.Utc);
        TimeSpan thinking = open.ThinkingAt(now, answered.Entry);
        double known = Prediction.Known(item, state.Memory, day);
        Grade grade = GradeOf(state.Memory, open, verdict, known, thinking);
        return new Attempt(open.Id!.Value, now.Utc, open.ShownAt, item.Key, item.Drill.Id, state.Id, day, grade, verdict.IsCorrect)
        {
            Setup = item.Drill.Setup.ToString(),
            Answer = verdict.Given,
            Expected = verdict.Expected,
            DidNotKnow = verdict.DidNotKnow,
            ConfusedWith = verdict.ConfusedWith,
            Partner = open.Question.Partner?.Key,
            Hints = open.Hints,
            Thinking = verdict.ChangesPerMinute is null ? thinking : TimeSpan.Zero,
            IsPrimed = state.Memory.IsPrimed(item.Key, day),
            Choices = open.Question.Choices.Length,
            Family = item.Family,
            Foreseen = Prediction.ChanceOfRight(known, open.Question.GuessChance),
        };
    }

    private static Grade GradeOf(MemoryState memory, OpenQuestion open, Verdict verdict, double known, TimeSpan thinking)
    {
        ItemKey key = open.Planned.Item.Key;
        bool isFirstSight = !memory.Items.ContainsKey(key);
        if (verdict.ChangesPerMinute is { } changes)
        {
            Grade made = ChangePace.GradeOf(changes, isFirstSight);
            return open.Hints > 0 && made > Grade.Strained ? Grade.Strained : made;
        }

        if (verdict.OwnGrade is { } own)
        {
            Grade most = open.Hints > 0 ? Grade.Strained : isFirstSight ? Grade.Steady : Grade.Instant;
            return own > most ? most : own;
        }

        double slowness = memory.UsualTimeIn(key.Direction).Slowness(thinking);
        Grade grade = Grading.Of(new Evidence(verdict.IsCorrect, open.Hints, open.Question.GuessChance, known, isFirstSight, slowness)
        {
            IsOnlyChosen = open.Question.Choices.Length > 0 && !memory.WasRightFreely(key.Shape),
        });
        return verdict.IsPartly && grade > Grade.Strained ? Grade.Strained : grade;
    }
}
