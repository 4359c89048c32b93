namespace Clampwise.Practice;

/// <summary>What a fit of the weights came to.</summary>
/// <param name="Answers">How many answers it had.</param>
/// <param name="Fitted">The weights found.</param>
/// <param name="LossBefore">Mean log loss of the weights in use on the newest fifth; lower is better.</param>
/// <param name="LossAfter">The same for the weights found.</param>
/// <param name="IsAccepted">True if they predict the newest fifth better.</param>
public sealed record FitReport(int Answers, FsrsWeights Fitted, double LossBefore, double LossAfter, bool IsAccepted)
{
    /// <summary>What the program says of it.</summary>
    public string Words => PlanningWords.Fit(this);

    /// <summary>The entry that writes the outcome down, taken or not, so that the next fit comes when the log has doubled.</summary>
    public WeightsChosen ToEntry(EntryId id, DateTimeOffset at, FsrsWeights inUse)
    {
        FsrsWeights chosen = IsAccepted ? Fitted : inUse;
        return new WeightsChosen(id, at, chosen.Equals(FsrsWeights.Default) ? [] : chosen.Values, Words);
    }
}
