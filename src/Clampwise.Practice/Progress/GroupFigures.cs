namespace Clampwise.Practice;

/// <summary>How one setup, direction or other group of items stands.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Asked">Questions answered.</param>
/// <param name="RightAnswers">Answered right.</param>
/// <param name="Items">Items met.</param>
/// <param name="Due">How many of these are due today.</param>
/// <param name="RecallTomorrow">Mean chance of recall of these items on the next day, 0 to 1; on the day itself it says nothing, since all is fresh.</param>
/// <param name="UsualTime">Median thinking time of right answers without hints; null if there is none.</param>
public sealed record GroupFigures(string Name, int Asked, int RightAnswers, int Items, int Due, double RecallTomorrow, TimeSpan? UsualTime);
