using Clampwise.Practice;
using Clampwise.Terminal;

namespace Clampwise.Tests.Screens;

[Collection(nameof(TestTerminal))]
public class DetunePageTests
{
    [Fact]
    public void Each_answer_is_in_the_log_and_the_step_is_where_it_was_left()
    {
        using var room = new Room();
        room.Type("t").Type("w");
        Assert.Contains("30 cents", room.Screen);
        // Which string is out is not shown: the same answer to six questions is right now and then.
        for (int i = 0; i < 6; i++)
        {
            room.Type("3").Press(KeyPress.Up, KeyPress.Enter);
        }

        TuningHeard[] heard = [.. room.Log.ReadAll().OfType<TuningHeard>()];
        Assert.Equal(6, heard.Length);
        Assert.All(heard, answer => Assert.Equal(answer.String.Number == 3 && answer.Cents > 0, answer.IsAllRight));
        Assert.All(heard, answer => Assert.Equal(answer.String.Number == 3, answer.IsStringRight));
        string corner = room.Screen.Split('\n')[0].Split("right")[^1].Trim();
        room.Press(KeyPress.Esc).Type("w");
        Assert.Contains($"0 of 0 right   {corner}", room.Screen);
    }

    [Fact]
    public void Right_answers_kept_from_before_make_the_step_small()
    {
        using var room = new Room();
        for (int i = 1; i <= 4; i++)
        {
            room.Log.Append(new TuningHeard(new EntryId(new Guid(900 + i, 0, 0, new byte[8])), room.Time.GetUtcNow().AddMinutes(-i), "standard", Fretboard.StringNumber.Of(1), 30, true, true));
        }

        Assert.Contains("16 cents", room.Type("t").Type("w").Screen);
    }

    [Fact]
    public void Without_sound_it_is_closed_and_counts_nothing()
    {
        using var room = new Room(isAudible: false);
        room.Type("t").Type("w").Type("3").Press(KeyPress.Up, KeyPress.Enter).Type("4").Press(KeyPress.Down);
        Assert.Contains("closed", room.Screen);
        Assert.Contains("no sound here", room.Screen);
        Assert.Contains("0 of 0 right", room.Screen);
        Assert.Empty(room.Log.ReadAll());
    }

    [Fact]
    public void An_answer_that_cannot_be_kept_says_so()
    {
        using var room = new Room();
        room.Log.Refusal = new Theory.Fault("the disk is full");
        Assert.Contains("the disk is full", room.Type("t").Type("w").Type("3").Press(KeyPress.Up).Screen);
    }
}
