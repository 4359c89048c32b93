namespace Clampwise.Practice;

/// <summary>What a fit of the weights came to.</summary>
/// <param name="Answers">How many answers it had.</param>
/// <param name="Fitted">The weights found.</param>
/// <param name="LossBefore">Mean log loss of the weights in use on the newest fifth; lower is better.</param>
/// <param name="LossAfter">The same for the weights found.</param>
/// <param name="StandardError">The standard error of the gain in mean loss, from answer to answer.</param>
public sealed record FitReport(int Answers, FsrsWeights Fitted, double LossBefore, double LossAfter, double StandardError)
{
    /// <summary>True if the weights found predict the newest fifth better by more than one standard error: less may be chance.</summary>
    public bool IsAccepted => LossBefore - LossAfter > StandardError;

    /// <summary>What the program says of it.</summary>
    public string Words => PlanningWords.Fit(this);

    /// <summary>The entry that writes the outcome down, taken or not, so that the next fit comes when the log has doubled.</summary>
    public WeightsChosen ToEntry(EntryId id, DateTimeOffset at, FsrsWeights inUse)
    {
        FsrsWeights chosen = IsAccepted ? Fitted : inUse;
        return new WeightsChosen(id, at, chosen.Equals(FsrsWeights.Default) ? [] : chosen.Values, Words);
    }
}
