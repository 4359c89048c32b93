namespace Clampwise.Practice;

/// <summary>What asking an item today is worth.</summary>
public static class Benefit
{
    /// <summary>Recall is compared so many days from now (our judgement: a month of playing).</summary>
    public const int HorizonDays = 30;

    /// <summary>
    /// Expected recall in <see cref="HorizonDays"/> days if the item is asked today, less that if it is left alone: both outcomes of
    /// the answer weighed by their chance.
    /// </summary>
    public static double Of(ItemMemory item, PracticeDay today, Fsrs model)
    {
        int days = item.DaysSince(today);
        double recall = item.RecallOn(today, model);
        double known = model.Recall(model.Next(item.Memory, days, Grade.Steady).Stability, HorizonDays);
        double missed = model.Recall(model.Next(item.Memory, days, Grade.Missed).Stability, HorizonDays);
        return (recall * known) + ((1 - recall) * missed) - model.Recall(item.Memory.Stability, days + HorizonDays);
    }
}
